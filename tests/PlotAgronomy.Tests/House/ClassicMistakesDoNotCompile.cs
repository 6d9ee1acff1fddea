using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using PlotAgronomy.Map.Sources;
using UnitsNet;

namespace PlotAgronomy.Tests.House;

/// <summary>The walls between quantities that look alike: the classic mistake is a compile error, the right call beside it is none.</summary>
public class ClassicMistakesDoNotCompile
{
    private const string WrongArgument = "CS1503";
    private const string NoSuchOperator = "CS0019";
    private const string NoConversion = "CS0029";

    /// <summary>What stands before every snippet: one of each quantity by a short name.</summary>
    private const string Given = """
        using PlotAgronomy;
        using PlotAgronomy.Blends;
        using PlotAgronomy.Fertilizers;
        using PlotAgronomy.Liming;
        using PlotAgronomy.Seeds;
        using PlotAgronomy.Soil;
        using UnitsNet;

        public static class Snippet
        {
            public static void Do(
                SeedAnalysis tag, ViabilityRule rule, BulkSeedRate bulk, PureLiveSeedRate live, BulkSeedMass bag, PureLiveSeedMass living,
                ApplicationRate rate, CropKind kind, SeedCount count, BlendComponent component, WaterPh water, BufferPh buffer, SaltPh salt,
                FertilizerAnalysis label, ElementalAnalysis elements, Manure manure, LimeRate lime, TestDateRule law, TestMonth test)
            {
        """;

    private static readonly Lazy<MetadataReference[]> References = new(() =>
    [
        .. ReferenceAssemblies.Framework(),
        MetadataReference.CreateFromFile(typeof(Fraction).Assembly.Location),
        MetadataReference.CreateFromFile(typeof(Mass).Assembly.Location),
    ]);

    /// <summary>The mistake, its error, how it is written, and what should stand in its place.</summary>
    public static TheoryData<string, string, string, string> Mistakes => new()
    {
        { "a bulk rate for one of pure live seed", WrongArgument, "PureLiveSeed.BulkRate(bulk, tag, rule);", "PureLiveSeed.BulkRate(live, tag, rule);" },
        { "a rate of pure live seed for a bulk one", WrongArgument, "PureLiveSeed.Delivered(live, tag, rule);", "PureLiveSeed.Delivered(bulk, tag, rule);" },
        { "a bulk rate held against the published rates", WrongArgument, "RateCheck.Against(kind, bulk);", "RateCheck.Against(kind, live);" },
        { "a bulk rate to count live seeds by", WrongArgument, "SeedDensity.FromRate(bulk, count);", "SeedDensity.FromRate(live, count);" },
        { "seeds along a row for seeds on the ground", NoConversion, "SeedDensity thick = RowDensity.FromSeedsPerFoot(30);", "SeedDensity thick = SeedDensity.FromRows(RowDensity.FromSeedsPerFoot(30), Length.FromInches(7));" },
        { "a bulk rate in a blend of live rates", WrongArgument, "Blend.FromLiveRates((component, bulk));", "Blend.FromLiveRates((component, live));" },
        { "a live rate in a blend of bulk rates", WrongArgument, "Blend.FromBulkRates((component, live));", "Blend.FromBulkRates((component, bulk));" },
        { "a rate that does not say what it counts", WrongArgument, "PureLiveSeed.BulkRate(rate, tag, rule);", "PureLiveSeed.BulkRate(PureLiveSeedRate.FromRate(rate, SowingMethod.Drilled), tag, rule);" },
        { "a bulk rate over one of pure live seed", NoSuchOperator, "_ = bulk / live;", "_ = bulk.Rate / PureLiveSeed.BulkRate(live, tag, rule).Bulk.Rate;" },
        { "pure live seed added to bulk seed", NoSuchOperator, "_ = bag + living;", "_ = bag + PureLiveSeed.BulkHolding(living, tag, rule);" },
        { "bulk seed compared with pure live seed", NoSuchOperator, "_ = bag == living;", "_ = bag == PureLiveSeed.BulkHolding(living, tag, rule);" },
        { "a weight of bulk seed for one of pure live seed", WrongArgument, "PureLiveSeed.BulkHolding(bag, tag, rule);", "PureLiveSeed.BulkHolding(living, tag, rule);" },
        { "a weight of pure live seed for one of bulk seed", WrongArgument, "InoculantNeed.For(kind, living);", "InoculantNeed.For(kind, bag);" },
        { "a percentage for a part of one", WrongArgument, "SeedAnalysis.FromFractions(98.0, 85.0);", "SeedAnalysis.FromFractions(Fraction.FromPercent(98), Fraction.FromPercent(85));" },
        { "a day for a month of test", WrongArgument, "law.LastDay(new System.DateOnly(2026, 3, 1));", "law.LastDay(test);" },
        { "buffer pH for water pH", NoConversion, "_ = new SoilReport { Laboratory = \"a\", WaterPh = buffer };", "_ = new SoilReport { Laboratory = \"a\", WaterPh = water };" },
        { "water pH for buffer pH", NoConversion, "_ = new SoilReport { Laboratory = \"a\", BufferPhs = [water] };", "_ = new SoilReport { Laboratory = \"a\", BufferPhs = [buffer] };" },
        { "salt pH for water pH", NoConversion, "_ = new SoilReport { Laboratory = \"a\", WaterPh = salt };", "_ = new SoilReport { Laboratory = \"a\", SaltPh = salt };" },
        { "salt pH where a sum asks for water pH", WrongArgument, "SulfurNeed.For(salt, 5.0, SoilTexture.Loam, false);", "SulfurNeed.For(water, 5.0, SoilTexture.Loam, false);" },
        { "a buffer reading without its buffer", "CS7036", "BufferPh.FromValue(6.6);", "BufferPh.FromValue(6.6, SoilBuffer.Mehlich);" },
        { "P and K for the P2O5 and K2O of a label", NoConversion, "FertilizerAnalysis printed = elements;", "FertilizerAnalysis printed = elements.ToLabel();" },
        { "the P2O5 and K2O of a label for P and K", NoConversion, "ElementalAnalysis inside = label;", "ElementalAnalysis inside = ElementalAnalysis.FromLabel(label);" },
        { "a nutrient of a label for a chemical form", WrongArgument, "ChemicalConversion.ExactFactor(PlantNutrient.Phosphate, ChemicalForm.Phosphorus);", "ChemicalConversion.ExactFactor(ChemicalForm.Phosphate, ChemicalForm.Phosphorus);" },
        { "lb in a ton for percent", NoConversion, "PercentRange nitrogen = manure.Nitrogen;", "PoundsPerTonRange nitrogen = manure.Nitrogen;" },
        { "any rate for a lime rate, which has a target, depth and basis", NoConversion, "LimeRate printed = rate;", "LimeRate printed = lime;" },
    };

    [Theory, MemberData(nameof(Mistakes))]
    public void The_mistake_does_not_compile_and_the_right_call_does(string mistake, string error, string wrong, string right)
    {
        Assert.Equal([error], ErrorsIn(wrong));
        Assert.True(ErrorsIn(right) is [], $"{mistake}: the right call has errors {string.Join(", ", ErrorsIn(right))}");
    }

    private static string[] ErrorsIn(string statement)
    {
        var tree = CSharpSyntaxTree.ParseText($"{Given}{statement} }} }}", cancellationToken: TestContext.Current.CancellationToken);
        var options = new CSharpCompilationOptions(OutputKind.DynamicallyLinkedLibrary, nullableContextOptions: NullableContextOptions.Enable);
        return
        [
            .. CSharpCompilation.Create("Snippet", [tree], References.Value, options)
                .GetDiagnostics(TestContext.Current.CancellationToken)
                .Where(d => d.Severity == DiagnosticSeverity.Error)
                .Select(d => d.Id)
                .Distinct(),
        ];
    }
}
