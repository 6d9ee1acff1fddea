using System.Collections.Immutable;
using PlotAgronomy.Reference;
using UnitsNet;

namespace PlotAgronomy.Seeds;

/// <summary>What a tag says of a whole bag: the kinds named on it, and the parts by weight that are none of them.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed partial class SeedTag
{
    /// <summary>Parts printed to two decimals may miss 100 by this much together.</summary>
    internal static double SumTolerancePercent => SeedConstants.All["tag-sum-tolerance"];

    /// <summary>Gets the kinds named on the tag.</summary>
    public required ImmutableArray<TagComponent> Components
    {
        get;
        init => field = Guard.Listed(value, nameof(Components));
    }

    /// <summary>Gets the components by kind: several varieties of one kind count as one lot of it.</summary>
    public ImmutableArray<TagComponent> ByKind => [.. Components.GroupBy(c => c.Kind.Id).Select(g => JoinedVarieties.Of([.. g]))];

    /// <summary>Gets the seed of other crops.</summary>
    public Fraction OtherCrop { get; init; }

    /// <summary>Gets the inert matter; coating is inside it.</summary>
    public Fraction Inert { get; init; }

    /// <summary>Gets the weed seed.</summary>
    public Fraction Weed { get; init; }

    /// <summary>Gets the coating of the whole bag, inside the inert matter; zero when the tag names none.</summary>
    public Fraction Coating { get; init; }

    /// <summary>Gets the noxious weed seeds named; empty when none were found.</summary>
    public ImmutableArray<NoxiousWeed> Noxious
    {
        get;
        init => field = Guard.Listed(value, nameof(Noxious));
    } = [];

    /// <summary>Gets the net weight, or null.</summary>
    public Mass? NetWeight { get; init; }

    /// <summary>Gets the month of test of the bag: of a mixture the oldest; null when not known.</summary>
    public TestMonth? TestMonth { get; init; }

    /// <summary>Gets the lot number, or null.</summary>
    public string? LotNumber { get; init; }

    /// <summary>Gets a value indicating whether the tag says the seed is treated.</summary>
    public bool IsTreated { get; init; }

    /// <summary>Gets a value indicating whether the tag says the seed was inoculated.</summary>
    public bool IsPreinoculated { get; init; }

    /// <summary>Gets the sum of all parts in percent of the bag. A lawful tag sums to 100 within 0.02 (7 CFR 201.47,
    /// SEED-S24).</summary>
    public double SumPercent =>
        Components.Sum(c => c.Analysis.PureSeed.Percent) + OtherCrop.Percent + Inert.Percent + Weed.Percent;

    /// <summary>Gets what is missing to 100 %, in percent of the bag; negative when the parts are too much.</summary>
    public double UnexplainedPercent => 100 - SumPercent;

    /// <summary>Gets the older of the bag's test and its components' tests, or null.</summary>
    public TestMonth? OldestTest =>
        Components
            .Select(c => c.TestMonth)
            .Append(TestMonth)
            .OfType<TestMonth>()
            .Order()
            .Select(m => (TestMonth?)m)
            .FirstOrDefault();

    /// <summary>What the parts say when they are read together.</summary>
    /// <returns>The findings, most serious first.</returns>
    public ImmutableArray<Finding> Check() => Finding.InOrder(Remarks());

    private IEnumerable<Finding> Remarks()
    {
        if (Tolerance.IsAbove(Math.Abs(UnexplainedPercent), SumTolerancePercent))
        {
            yield return FindingCatalog.Create(
                UnexplainedPercent > 0 ? SeedCodes.TagPartMissing : SeedCodes.TagTooMuch,
                ("sum", Amounts.Print(SumPercent, 2)),
                ("difference", Amounts.Print(Math.Abs(UnexplainedPercent), 2))
            );
        }

        if (Weed.Percent > SeedConstants.All["tag-weed-high"])
        {
            yield return FindingCatalog.Create(SeedCodes.MuchWeed, ("weed", Amounts.Print(Weed, 2)));
        }

        foreach (var weed in Noxious)
        {
            yield return FindingCatalog.Create(
                SeedCodes.Noxious,
                ("weed", weed.Name),
                ("count", Amounts.Print(weed.SeedsPerPound, 1))
            );
        }

        if (Coating.Value > Inert.Value + SumTolerancePercent / 100)
        {
            yield return FindingCatalog.Create(
                SeedCodes.CoatingOutsideInert,
                ("coating", Amounts.Print(Coating, 2)),
                ("inert", Amounts.Print(Inert, 2))
            );
        }

        if (Coating.Value <= 0 && Inert.Percent > SeedConstants.All["tag-inert-high"])
        {
            yield return FindingCatalog.Create(SeedCodes.MuchInert, ("inert", Amounts.Print(Inert, 2)));
        }

        if (IsTreated)
        {
            yield return FindingCatalog.Create(SeedCodes.Treated);
        }

        foreach (var component in Components.Where(c => c.Kind.TagGivesDormantSeed && c.Analysis.DormantSeed.Value <= 0))
        {
            yield return FindingCatalog.Create(SeedCodes.DormantNotGiven, ("kind", component.Kind.ShortName));
        }

        foreach (var component in Components.Where(c => c.Analysis.Germination < SeedAnalysis.GerminationFloorFor(c.Kind)))
        {
            yield return FindingCatalog.Create(
                SeedCodes.BelowFloor,
                ("germination", Amounts.Print(component.Analysis.Germination, 1)),
                ("floor", Amounts.Print(SeedAnalysis.GerminationFloorFor(component.Kind), 1)),
                ("kind", component.Kind.ShortName)
            );
        }
    }

    /// <summary>The kinds and their purity.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => string.Join("; ", Components);
}
