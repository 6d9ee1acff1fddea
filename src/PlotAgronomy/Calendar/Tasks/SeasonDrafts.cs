namespace PlotAgronomy.Calendar;

/// <summary>The tasks of a season by their rows: one for each pass, dose and dressing.</summary>
internal sealed class SeasonDrafts(SeasonRequest request, SmotherDates? smother)
{
    /// <summary>Covering stands between the passes of large and of small seed.</summary>
    private const int AfterCovering = 2;

    private readonly TaskDates dates = new(request, smother);

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
                    Alone(row) with
                    {
                        Part = i + 1,
                        Places = [("pass", $"{pass}")],
                        Order = pass.IsCovered ? row.Order : row.Order + AfterCovering,
                    }
            ),
            "nitrogen" => Doses(row),
            "lime-later" => request.LaterDressings.Select((on, i) => Alone(row) with { Part = i + 2, Days = new(on, on) }),
            "smother-sow" or "smother-kill" or "smother-over-seed" => smother is null
                ? []
                : [Alone(row) with { Origin = smother.Origin }],
            _ => [Alone(row)],
        };

    private TaskDraft Alone(TaskRow row) => new(row, null, dates.Of(row.Anchor, row.LowDays, row.HighDays), Places, row.Origin);

    /// <summary>A dose at sowing goes on with the fertilizer, and has no date of its own.</summary>
    private IEnumerable<TaskDraft> Doses(TaskRow row) =>
        request
            .NitrogenDoses.Select((dose, i) => (Dose: dose, Number: i + 1, Time: DoseTime.Of(dose.When)))
            .Where(d => d.Time is not null)
            .Select(d => new TaskDraft(
                row,
                d.Number,
                dates.Of(d.Time!.Anchor, d.Time.LowDays, d.Time.HighDays),
                [("when", d.Dose.When)],
                d.Time.Origin
            ));

    private (string, string)[] Places =>
        [
            ("legumes", CalendarText.Names(request.Kinds.Where(k => k.IsLegume))),
            ("smother", smother?.Kind.ShortName ?? ""),
            ("words", Sentence(request.Weeds?.Words)),
            ("days", smother is { Days: var (low, high) } ? DaysInWords(low, high) : LabelDays),
        ];

    private string LabelDays => request.Weeds?.LabelDays is { } days ? CalendarText.Count(days) : "its own number of";

    private static string DaysInWords(int low, int high) =>
        low == high ? CalendarText.Count(low) : $"{CalendarText.Count(low)} to {CalendarText.Count(high)}";

    private static string Sentence(string? words) =>
        string.IsNullOrWhiteSpace(words) ? ""
        : words.EndsWith('.') ? words
        : $"{words}.";
}
