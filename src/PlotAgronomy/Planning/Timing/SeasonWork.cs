using System.Collections.Immutable;
using PlotAgronomy.Calendar;
using PlotAgronomy.Fertilizers;
using PlotAgronomy.Liming;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Planning;

/// <summary>A task of the season with what is spread in it.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class SeasonWork
{
    internal SeasonWork() { }

    /// <summary>Gets the number in the season, from 1, in the order of the days.</summary>
    public required int Number { get; init; }

    /// <summary>Gets the task.</summary>
    public required SeasonTask Task { get; init; }

    /// <summary>Gets what is spread in it; none where nothing is, or nothing is known to be bought.</summary>
    public required ImmutableArray<SeasonMaterial> Materials { get; init; }

    /// <summary>Gets the numbers of the tasks that must be done before.</summary>
    public required ImmutableArray<int> WaitsFor { get; init; }

    internal static ImmutableArray<SeasonWork> Of(PlotAnswers answers, SeasonCalendar calendar)
    {
        var number = calendar.Tasks.Select((t, i) => (t.Id, Number: i + 1)).ToDictionary(t => t.Id, t => t.Number);
        return
        [
            .. calendar.Tasks.Select(task => new SeasonWork
            {
                Number = number[task.Id],
                Task = task,
                Materials = [.. MaterialsOf(answers, task)],
                WaitsFor = [.. task.WaitsFor.Select(id => number[id]).Order()],
            }),
        ];
    }

    private static IEnumerable<SeasonMaterial> MaterialsOf(PlotAnswers answers, SeasonTask task)
    {
        if (task.Pass is { } pass)
        {
            var kinds = answers.Spreading.OrNull()?.Passes.FirstOrDefault(p => p.Number == pass)?.Kinds ?? [];
            return kinds.Select(k => new SeasonMaterial { Name = k.Planned.Kind.ShortName, Mass = k.Weight.ToMass() });
        }

        return task.Spreads switch
        {
            SeasonSpread.FirstLime => Lime(answers, d => d.MonthsAfterFirst == 0),
            SeasonSpread.LaterLime => Lime(answers, d => d.MonthsAfterFirst > 0 && d.Number == task.Part),
            SeasonSpread.Fertilizer => Bought(answers).Select(l => new SeasonMaterial { Name = l.Product.Name, Mass = l.Spread }),
            _ => [],
        };
    }

    private static IEnumerable<SeasonMaterial> Lime(PlotAnswers answers, Func<LimeDressing, bool> isWanted) =>
        answers.Lime.Told is var lime && lime.Order.OrNull() is { } order
            ? order.Dressings.Where(isWanted).Select(d => new SeasonMaterial { Name = lime.Offer!.Item.Name, Mass = d.Mass })
            : [];

    private static ImmutableArray<PurchaseLine> Bought(PlotAnswers answers) =>
        answers.Fertilizer.TryGetPart(out var fertilizer) && fertilizer.Purchase.OrNull() is { } purchase ? purchase.Lines : [];

    /// <summary>The task.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => Task.ToString();
}
