using PlotAgronomy.Nutrients;

namespace PlotAgronomy.Calendar;

/// <summary>The tasks of a season by their rows: one for each pass, dose and dressing.</summary>
internal sealed class SeasonDrafts(SeasonRequest request, SmotherDates? smother)
{
    /// <summary>Covering stands between the passes of large and of small seed.</summary>
    private const int AfterCovering = 2;

    private readonly TaskDates dates = new(request, smother);
    private readonly TaskPlaces places = new(request, smother);

    internal IEnumerable<TaskDraft> All()
    {
        var holds = SeasonConditions.Of(request);
        return TaskRow.All.Where(row => row.Applies.All(holds.Contains)).SelectMany(Of);
    }

    private IEnumerable<TaskDraft> Of(TaskRow row) =>
        row.Id switch
        {
            _ when row.IsSowing => request.Passes.Select(
                (pass, i) =>
                    Alone(row, ("pass", $"{pass}")) with
                    {
                        Part = i + 1,
                        Order = pass.IsCovered ? row.Order : row.Order + AfterCovering,
                    }
            ),
            "nitrogen" => Doses(row),
            "lime-later" => request.LaterDressings.Select(
                (on, i) => Alone(row) with { Part = FirstLater + i, Days = new(on, on) }
            ),
            "smother-sow" or "smother-kill" or "smother-over-seed" => smother is null
                ? []
                : [Alone(row) with { Origin = smother.Origin }],
            _ when row.Spreads == SeasonSpread.FirstLime && !request.Chosen.FirstDressings.IsEmpty => Dressings(row),
            _ => [Alone(row)],
        };

    private int FirstLater => Math.Max(1, request.Chosen.FirstDressings.Length) + 1;

    private TaskDraft Alone(TaskRow row, params (string Place, string Value)[] more) =>
        new(row, null, dates.Of(row.Anchor, row.LowDays, row.HighDays), [.. more, .. places.All], row.Origin)
        {
            Words = OnlyIf(row) + dates.Words(row.Anchor, row.LowDays, row.HighDays),
        };

    /// <summary>While nobody knows in which season it is sown, the task says for which it is one.</summary>
    private string OnlyIf(TaskRow row) =>
        request.IsFallSowing is not null ? ""
        : row.Applies.Contains(SeasonCondition.SpringSown) ? "if sown in spring, "
        : row.Applies.Contains(SeasonCondition.FallSown) ? "if sown in fall, "
        : "";

    private IEnumerable<TaskDraft> Dressings(TaskRow row) =>
        request.Chosen.FirstDressings.Select(number =>
            Alone(row, ("dressing", $", dressing {CalendarText.Count(number)},"), ("work", WorkOf(number))) with
            {
                Part = number,
            }
        );

    /// <summary>Parts of one day are not worked in together: the first is plowed down.</summary>
    private string WorkOf(int dressing) =>
        request.Chosen.FirstDressings.Length == 1 ? "work it in"
        : dressing == request.Chosen.FirstDressings[0] ? "plow it down before the next dressing"
        : "work it in by the tillage after the plow, not with the dressing before";

    /// <summary>A dose at sowing goes on with the fertilizer, and has no date of its own.</summary>
    private IEnumerable<TaskDraft> Doses(TaskRow row) =>
        request
            .NitrogenDoses.Select((dose, i) => (Dose: dose, Number: i + 1, Time: DoseTime.Of(dose.When)))
            .Where(d => d.Time is not null)
            .Select(d =>
                Alone(row, ("when", d.Dose.When), ("dose", Amount(d.Dose)), ("frozen", Frozen(d.Time!))) with
                {
                    Part = d.Number,
                    Days = dates.Of(d.Time!.Anchor, d.Time.LowDays, d.Time.HighDays),
                    Words = dates.Words(d.Time.Anchor, d.Time.LowDays, d.Time.HighDays),
                    Origin = d.Time.Origin,
                }
            );

    private static string Frozen(DoseTime time) => time.MayFreeze ? "; where the ground freezes, at green-up instead" : "";

    private static string Amount(NitrogenDose dose) =>
        dose.Low == dose.High
            ? Amounts.Print(dose.High, "lb/ac", 0)
            : $"{Amounts.Print(dose.Low.PoundsPerAcre, 0)} to {Amounts.Print(dose.High, "lb/ac", 0)}";
}
