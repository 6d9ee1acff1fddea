using System.Collections.Immutable;
using PlotAgronomy.Calendar;
using PlotAgronomy.Fertilizers;
using PlotAgronomy.Records;
using UnitsNet;

namespace PlotAgronomy.Planning;

/// <summary>The blank for nitrogen that is given to the stand: all its dressings of one product together.</summary>
internal sealed class DressingReader(PlotAnswers answers)
{
    private readonly PlotPlan plan = answers.Plan;

    /// <summary>Whether an entry is of the stand, where the same product is spread for the sowing too.</summary>
    internal static bool IsDressing(PlotAnswers answers, FertilizerEntry spread) =>
        Lines(answers, spread.Product.Name).Any() && spread.On >= FirstDay(answers.Plan);

    internal BlankReader For(string product)
    {
        ImmutableArray<PurchaseLine> lines = [.. Lines(answers, product)];
        var first = lines[0];
        var bag = first.Offer.Package.WholeWeight;
        var whole = Mass.FromPounds(lines.Sum(l => l.Spread.Pounds));
        return new()
        {
            Asks = $"Given to the stand, {product}",
            Planned = $"{Amounts.PrintForScale(whole)}{On(Day)}",
            Example = "1 bag 2027-03-10, or none",
            Day = Day,
            Plot = plan.Plot.Name,
            AsPlanned = on => Entry(on, first, [SpreadLoad.FromWeight(whole)]),
            Instead = (on, text) => [Entry(on, first, TypedText.Loads(text, bag))],
            IsSaidBy = e => e is FertilizerEntry given && given.Product.Name == product && given.On >= FirstDay(plan),
        };
    }

    /// <summary>What is spread later than this after the sowing is for the stand.</summary>
    private static DateOnly FirstDay(PlotPlan plan) =>
        plan.PlantingDate?.AddDays((int)PlanningConstants.All["dressing-days-after"]) ?? DateOnly.MinValue;

    /// <summary>The first day of the dressing in the calendar of the plan; null where it goes by the stand.</summary>
    private DateOnly? Day => answers.SeasonWork.FirstOrDefault(w => w.Task.Spreads == SeasonSpread.Nitrogen)?.Task.Earliest;

    private static IEnumerable<PurchaseLine> Lines(PlotAnswers answers, string product) =>
        answers.Fertilizer.Told.Later.Where(l => l.Product.Name == product);

    private static string On(DateOnly? day) => day is { } known ? $", from {FieldWriter.Of(known)} on" : ", day not set";

    private FertilizerEntry Entry(DateOnly on, PurchaseLine line, ImmutableArray<SpreadLoad> loads) =>
        new()
        {
            On = on,
            Plot = plan.Plot.Name,
            Product = line.Product,
            Loads = loads,
        };
}
