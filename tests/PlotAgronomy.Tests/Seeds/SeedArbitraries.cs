using FsCheck;
using FsCheck.Fluent;
using PlotAgronomy.Seeds;

namespace PlotAgronomy.Tests.Seeds;

/// <summary>Generators for the properties of seeds: tags as laboratories print them, in hundredths of a percent.</summary>
public static class SeedArbitraries
{
    public static Arbitrary<SeedAnalysis> Analyses() =>
        (from pure in Gen.Choose(500, 10_000)
         from germination in Gen.Choose(100, 10_000)
         from hard in Gen.Choose(0, 10_000 - germination)
         from dormant in Gen.Choose(0, 10_000 - germination - hard)
         from coating in Gen.Choose(0, 10_000 - pure)
         select SeedAnalysis.FromFractions(Hundredths(pure), Hundredths(germination), Hundredths(hard), Hundredths(dormant), Hundredths(coating))).ToArbitrary();

    public static Arbitrary<ViabilityRule> Rules() =>
        Gen.Elements(ViabilityRule.GerminationOnly, ViabilityRule.GerminationAndHard, ViabilityRule.GerminationAndDormant, ViabilityRule.TotalViable, ViabilityRule.Credit(0.5, 0.25)).ToArbitrary();

    public static Arbitrary<CropKind> Kinds() => Gen.Elements(KindCatalog.Standard.Kinds.AsEnumerable()).ToArbitrary();

    public static Arbitrary<PureLiveSeedRate> LivingRates() =>
        (from eighths in Gen.Choose(1, 2000) from method in Gen.Elements(Enum.GetValues<SowingMethod>()) select PureLiveSeedRate.FromRate(ApplicationRate.FromPoundsPerAcre(eighths / 8.0), method)).ToArbitrary();

    public static Arbitrary<GerminationTest> Tests() =>
        (from seeds in Gen.Choose(1, 800) from germinated in Gen.Choose(0, seeds) select GerminationTest.FromCount(germinated, seeds)).ToArbitrary();

    /// <summary>Scraps of tags in any order: most make no sense, all must be taken without an exception.</summary>
    internal static Gen<string> ScrapsOfTags { get; } =
        Gen.Elements("Kind:", "crimson clover", "oats", "Pure seed", "98.5%", "85 %", "0,5%", "12", "100%", "400", "germ", "Germination", "hard", "dormant", "total", "PLS", "inert", "weed", "crop", "coating", "coated",
            "noxious: 3 dock", "none", "test date 13/25", "tested 2/31/2024", "06/25", "May 25", "net wt 5 lb", "50 lb", "lot A1", "origin: OR", "variety:", "treated", "inoculant", "sell by 3/26", ":", "%", "\n", "\n", "\n", "\t", "{x}")
            .ListOf().Select(parts => string.Join(' ', parts));

    internal static Fraction Hundredths(int hundredths) => Fraction.FromPercent(hundredths / 100.0);
}
