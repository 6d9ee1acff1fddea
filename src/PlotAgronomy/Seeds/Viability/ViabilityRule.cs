using System.Collections.Immutable;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Seeds;

/// <summary>Which pure seeds count as alive: a published rule by its name.</summary>
/// <remarks>viable = germination + hard credit x hard seed + dormant credit x dormant seed.</remarks>
[JsonConverter(typeof(NotForJson))]
public sealed class ViabilityRule
{
    private readonly string formulaId;

    private ViabilityRule(string name, string formulaId, double hardCredit, double dormantCredit)
    {
        this.formulaId = formulaId;
        Name = name;
        HardCredit = hardCredit;
        DormantCredit = dormantCredit;
    }

    /// <summary>Gets the rule that counts germination only.</summary>
    public static ViabilityRule GerminationOnly { get; } = new("germination only", "viable-by-germination", 0, 0);

    /// <summary>Gets the rule that counts germination and hard seed.</summary>
    public static ViabilityRule GerminationAndHard { get; } = new("germination + hard seed", "viable-with-hard", 1, 0);

    /// <summary>Gets the rule that counts germination and dormant seed.</summary>
    public static ViabilityRule GerminationAndDormant { get; } = new("germination + dormant seed", "viable-with-dormant", 0, 1);

    /// <summary>Gets the rule that counts germination, hard and dormant seed: what agencies check for cost share.</summary>
    public static ViabilityRule TotalViable { get; } = new("total viable", "viable-in-all", 1, 1);

    /// <summary>Gets the name.</summary>
    public string Name { get; }

    /// <summary>Gets the formula in words.</summary>
    public string Formula => Row.InWords;

    /// <summary>Gets the part of hard seed that counts, from 0 to 1.</summary>
    public double HardCredit { get; }

    /// <summary>Gets the part of dormant seed that counts, from 0 to 1.</summary>
    public double DormantCredit { get; }

    /// <summary>Gets the viability found by a tetrazolium test, which then stands for all else; else null.</summary>
    public Fraction? Tested { get; private init; }

    /// <summary>Gets the sources.</summary>
    public ImmutableArray<Source> Sources => Row.Origin!.Sources;

    private Formula Row => SeedFormulas.All[formulaId];

    /// <summary>The rule for a use.</summary>
    /// <param name="use">What the sowing is for.</param>
    /// <returns>One season: germination only. Perennial or reseeding: germination + hard. Native grass: germination +
    /// dormant.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Unknown use.</exception>
    /// <remarks>Common practice.</remarks>
    public static ViabilityRule For(SeedUse use) =>
        Guard.Defined(use) switch
        {
            SeedUse.OneSeason => GerminationOnly,
            SeedUse.NativeGrass => GerminationAndDormant,
            _ => GerminationAndHard,
        };

    /// <summary>The rule for a kind as it is usually grown: warm-season perennial grasses as native grass, other perennials and
    /// biennials as perennial, annuals for one season. For an annual that is to reseed, name the use yourself.</summary>
    /// <param name="kind">Kind.</param>
    /// <returns>The rule.</returns>
    public static ViabilityRule For(CropKind kind)
    {
        ArgumentNullException.ThrowIfNull(kind);
        return For(
            kind switch
            {
                { LifeCycle: LifeCycle.Annual } => SeedUse.OneSeason,
                { Group: FunctionalGroup.Grass, GrowingSeason: GrowingSeason.Warm } => SeedUse.NativeGrass,
                _ => SeedUse.PerennialOrReseeding,
            }
        );
    }

    /// <summary>A rule that counts a part of the hard and dormant seed.</summary>
    /// <param name="hardCredit">Part of hard seed that counts; from 0 to 1.</param>
    /// <param name="dormantCredit">Part of dormant seed that counts; from 0 to 1.</param>
    /// <returns>The rule.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A credit outside 0 to 1.</exception>
    /// <remarks>Common practice.</remarks>
    public static ViabilityRule Credit(double hardCredit, double dormantCredit) =>
        new(
            $"germination + {Amounts.Print(hardCredit, 3)} hard + {Amounts.Print(dormantCredit, 3)} dormant",
            "viable-by-credit",
            Guard.Between(hardCredit, 0, 1, "(a pure number)"),
            Guard.Between(dormantCredit, 0, 1, "(a pure number)")
        );

    /// <summary>A rule that takes the viability of a tetrazolium test in place of germination: for natives that do not germinate
    /// within a test.</summary>
    /// <param name="viable">Part of the pure seeds found alive.</param>
    /// <returns>The rule.</returns>
    /// <remarks>7 CFR 201.57a (SEED-S19).</remarks>
    public static ViabilityRule Tetrazolium(Fraction viable) =>
        new("tetrazolium", "viable-by-tetrazolium", 0, 0) { Tested = viable };

    /// <summary>The part of the pure seeds that counts as alive.</summary>
    /// <param name="analysis">Analysis of the seed.</param>
    /// <returns>The part, at most the whole.</returns>
    public Fraction Viable(SeedAnalysis analysis)
    {
        ArgumentNullException.ThrowIfNull(analysis);
        return Tested
            ?? analysis.Tetrazolium
            ?? Fraction.FromValue(
                SeedMath.ViableFraction(
                    analysis.Germination.Value,
                    analysis.HardSeed.Value,
                    analysis.DormantSeed.Value,
                    HardCredit,
                    DormantCredit
                )
            );
    }

    /// <summary>How the living part of the pure seeds is found.</summary>
    internal WorkedLine Line(SeedAnalysis analysis) =>
        (Tested is null && analysis.Tetrazolium is { } tested ? Tetrazolium(tested).Row : Row).Line(
            Amounts.Print(Viable(analysis), 2),
            ("germination", Amounts.Print(analysis.Germination, 2)),
            ("hard", Amounts.Print(analysis.HardSeed, 2)),
            ("dormant", Amounts.Print(analysis.DormantSeed, 2)),
            ("hard credit", Amounts.Print(HardCredit, 3)),
            ("dormant credit", Amounts.Print(DormantCredit, 3))
        );

    /// <summary>The part of the bag's weight that is pure and counts as alive.</summary>
    internal double PureLivePart(SeedAnalysis analysis) =>
        SeedMath.PureLiveFraction(analysis.PureSeed.Value, Viable(analysis).Value);

    /// <summary>The name.</summary>
    /// <returns>The name.</returns>
    public override string ToString() => Name;
}
