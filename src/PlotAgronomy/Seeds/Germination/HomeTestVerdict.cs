using System.Collections.Immutable;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Seeds;

/// <summary>What a germination test at home says about the tag.</summary>
/// <remarks>Common practice: a test of fewer than 50 seeds decides nothing.
/// While the tag's figure lies inside the test's 95 % range, keep the tag; else use the home figure and
/// raise the rate by tag / home, by no more than half; a lot below 60 % of its tag is too weak to mend by rate. The test itself
/// (SEED-S86): 100 seeds not selected, 50 of large seed, on a wet wrung paper towel, rolled, in a plastic bag at 70-86 F,
/// normal seedlings counted after about 4 and 7 days.</remarks>
[JsonConverter(typeof(NotForJson))]
public sealed class HomeTestVerdict : IWorkedResult
{
    private readonly SeedAnalysis tag;

    private HomeTestVerdict(SeedAnalysis tag, GerminationTest test)
    {
        this.tag = tag;
        Test = test;
    }

    /// <summary>Gets the test.</summary>
    public GerminationTest Test { get; }

    /// <summary>Gets a value indicating whether the test took too few seeds to decide anything: below 50 (SEED-S86).</summary>
    public bool HasTooFewSeeds => Test.Seeds < FewestSeeds;

    /// <summary>Gets a value indicating whether the tag is kept: its germination lies inside the test's range, or the test took
    /// too few seeds.</summary>
    public bool KeepTag => HasTooFewSeeds || (tag.Germination >= Test.Low && tag.Germination <= Test.High);

    /// <summary>Gets what to multiply the tag's bulk rate by; at most 1.5.</summary>
    public double RateFactor =>
        KeepTag ? 1 : SeedMath.RateFactorOfHomeTest(tag.Germination.Value, Test.Germination.Value, MostRaise);

    /// <summary>Gets a value indicating whether the factor would have been above 1.5 and was held there.</summary>
    public bool IsCapped => !KeepTag && tag.Germination.Value / Test.Germination.Value > MostRaise;

    /// <summary>Gets the germination to sow by.</summary>
    internal Fraction Germination => KeepTag ? tag.Germination : Test.Germination;

    /// <inheritdoc/>
    public ImmutableArray<Finding> Findings => Finding.InOrder(Remarks());

    /// <inheritdoc/>
    public ImmutableArray<Source> Sources => Range.Origin!.Sources;

    private static Formula Range => SeedFormulas.All["home-test-range"];

    private static double FewestSeeds => SeedConstants.All["home-test-seeds-low"];

    private static double MostRaise => SeedConstants.All["home-test-raise-high"];

    /// <summary>Compares a test at home with the tag.</summary>
    /// <param name="tag">Analysis on the tag; its germination above 0.</param>
    /// <param name="test">Test at home.</param>
    /// <returns>The verdict.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The tag claims no germination.</exception>
    public static HomeTestVerdict Compare(SeedAnalysis tag, GerminationTest test)
    {
        ArgumentNullException.ThrowIfNull(tag);
        ArgumentNullException.ThrowIfNull(test);
        Guard.Above(tag.Germination.Value, 0, "germination on the tag", nameof(tag));
        return new(tag, test);
    }

    /// <inheritdoc/>
    public ImmutableArray<WorkedLine> ShowWork()
    {
        return
        [
            Range.Line($"{Test}; tag {Amounts.Print(tag.Germination, 1)}"),
            KeepTag
                ? SeedFormulas.All["home-test-tag-kept"].Line("1 (tag kept)")
                : SeedFormulas
                    .All["home-test-factor"]
                    .Line(
                        Amounts.Print(RateFactor, 3) + (IsCapped ? " (held)" : ""),
                        ("tag", Amounts.Print(tag.Germination, 1)),
                        ("home", Amounts.Print(Test.Germination, 1)),
                        ("most", Amounts.Print(MostRaise, 1))
                    ),
        ];
    }

    private IEnumerable<Finding> Remarks()
    {
        (string, string)[] numbers = [("home", Amounts.Print(Test.Germination, 1)), ("tag", Amounts.Print(tag.Germination, 1))];
        if (HasTooFewSeeds)
        {
            yield return FindingCatalog.Create(
                SeedCodes.HomeTestFewSeeds,
                ("test", Test.ToString()),
                ("fewest", Amounts.Print(FewestSeeds, 0))
            );
            yield break;
        }

        if (KeepTag)
        {
            yield return FindingCatalog.Create(
                SeedCodes.HomeTestAgrees,
                [.. numbers, ("low", Amounts.Print(Test.Low, 1)), ("high", Amounts.Print(Test.High, 1))]
            );
            yield break;
        }

        double part = Test.Germination.Value / tag.Germination.Value;
        yield return part < SeedConstants.All["home-test-buy-new"] ? FindingCatalog.Create(SeedCodes.HomeTestBuyNew, numbers)
        : part < SeedConstants.All["home-test-weak"] ? FindingCatalog.Create(SeedCodes.HomeTestWeak, numbers)
        : FindingCatalog.Create(SeedCodes.HomeTestDiffers, [.. numbers, ("factor", Amounts.Print(RateFactor, 2))]);
        if (IsCapped)
        {
            yield return FindingCatalog.Create(SeedCodes.HomeTestCapped);
        }
    }

    /// <summary>What it comes to: the last line of its working.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => this.InWords();
}
