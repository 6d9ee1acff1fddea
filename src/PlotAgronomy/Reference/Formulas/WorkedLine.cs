using PlotAgronomy.Reference;

namespace PlotAgronomy;

/// <summary>One line of a sum as a person would write it on paper.</summary>
/// <param name="Label">What the line finds, such as <c>Bulk rate</c>.</param>
/// <param name="Formula">Formula in words or symbols, such as <c>PLS rate / (purity x germination)</c>.</param>
/// <param name="Numbers">The same formula with its numbers, units and answer.</param>
/// <param name="Origin">Where the formula stands and how well that is known; null for plain arithmetic.</param>
/// <example>
/// <code>
/// var tag = SeedAnalysis.FromFractions(Fraction.FromPercent(98.5), germination: Fraction.FromPercent(78));
/// var seed = PureLiveSeed.BulkRate(PureLiveSeedRate.BroadcastPoundsPerAcre(20), tag, ViabilityRule.GerminationOnly);
/// Console.WriteLine(seed.ShowWork()[^1]);
/// // Bulk rate = PLS rate / pure live seed = 20 lb/ac / 0.7683 = 26.03 lb/ac, broadcast [SEED-S01]
/// </code>
/// </example>
[JsonConverter(typeof(NotForJson))]
public sealed record WorkedLine(string Label, string Formula, string Numbers, Origin? Origin = null)
{
    /// <summary>The line as text.</summary>
    /// <returns>Text such as <c>Bulk rate = PLS rate / (purity x germination) = 8 / (0.98 x 0.85) = 9.6 lb/ac
    /// [SRC]</c>; a number seen only as another publication quotes it is marked <c>[SRC, secondary]</c>.</returns>
    public override string ToString() => $"{Label} = {Formula} = {Numbers}{Place}";

    /// <summary>Where its numbers stand, in brackets after a blank; nothing where the formula is no one's.</summary>
    internal string Place
    {
        get
        {
            string seenIn = Origin?.Status == DataStatus.Secondary ? $", {DataStatuses.Words[DataStatus.Secondary]}" : "";
            return Origin is null ? "" : $" [{Origin}{seenIn}]";
        }
    }

    /// <summary>The line with the place its numbers stand in, where the formula itself has none.</summary>
    internal WorkedLine From(Origin? origin) => this with { Origin = origin };
}
