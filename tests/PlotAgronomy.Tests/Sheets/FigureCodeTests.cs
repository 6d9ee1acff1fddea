using PlotAgronomy.Fertilizers;
using PlotAgronomy.Liming;
using PlotAgronomy.Sheets;
using UnitsNet;

namespace PlotAgronomy.Tests.Sheets;

/// <summary>A code stands on paper and in other programs: it names one thing, and keeps naming it.</summary>
public class FigureCodeTests
{
    private static PlotPlan Plan => FieldSheetWritingTests.Plan("fall-blend");

    private static FieldSheet Sheet(PlotPlan plan) => FieldSheet.Of(plan.Solve());

    [Theory, MemberData(nameof(SheetJsonTests.Sheets), MemberType = typeof(SheetJsonTests))]
    public void A_code_is_words_joined_by_dots_and_no_nutrients_sign(string name)
    {
        var codes = SheetJsonTests.Sheet(name).Figures.Select(f => f.Code).ToList();
        Assert.NotEmpty(codes);
        Assert.All(codes, code => Assert.Matches("^[a-z0-9]+(-[a-z0-9]+)*(\\.[a-z0-9]+(-[a-z0-9]+)*)+$", code));
        Assert.Empty(codes.Intersect(Enum.GetValues<PlantNutrient>().Select(n => PlantNutrients.Symbols[n]), StringComparer.OrdinalIgnoreCase));
    }

    public static TheoryData<string> Additions => ["a printed lime rate", "a printed need", "a kind", "a kind first", "a lime", "a fertilizer", "a fertilizer first", "a lot"];

    private static PlotPlan With(string addition)
    {
        var plan = Plan;
        var dear = Offer.InBags(FertilizerProduct.Create("0-0-1", FertilizerAnalysis.FromGrade("0-0-1")), Mass.FromPounds(50), 900);
        var wheat = FieldSheetWritingTests.Plan("store-blend").SeedOffers.First(o => plan.Kinds.All(k => k.Kind != o.Item.Kind));
        var kind = new PlannedKind { Share = KindShare.FromShare(wheat.Item.Kind, 0.05), Offer = wheat };
        return addition switch
        {
            "a printed lime rate" => plan with { Printed = new PrintedAdvice { Crop = "clover", Lime = PrintedLimeRate.Read(ApplicationRate.FromShortTonsPerAcre(0.7), 6, Length.FromInches(6), LimeBasis.Find("north-carolina-standard"), Institution.NorthCarolina) } },
            "a printed need" => plan with { Printed = new PrintedAdvice { Crop = "clover", Potash = ApplicationRate.FromPoundsPerAcre(57) } },
            "a kind" => plan with { Kinds = [.. plan.Kinds, kind] },
            "a kind first" => plan with { Kinds = [kind, .. plan.Kinds] },
            "a lime" => plan with { LimeOffers = [Offer.InBags(plan.LimeOffers[0].Item, Mass.FromPounds(50), 900), .. plan.LimeOffers] },
            "a fertilizer" => plan with { FertilizerOffers = [.. plan.FertilizerOffers, dear] },
            "a fertilizer first" => plan with { FertilizerOffers = [dear, .. plan.FertilizerOffers] },
            _ => plan with { SeedOffers = [wheat, .. plan.SeedOffers] },
        };
    }

    /// <summary>What the figures of a pass hold may become another, for seed is sorted anew; every other figure is the same thing.</summary>
    [Theory, MemberData(nameof(Additions))]
    public void Whatever_is_added_the_other_figures_keep_their_codes(string addition)
    {
        var before = Sheet(Plan).Figures.ToDictionary(f => f.Code, f => f.Label);
        var after = Sheet(With(addition)).Figures.ToDictionary(f => f.Code, f => f.Label);
        Assert.Empty(before.Keys.Where(c => !c.StartsWith("pass-", StringComparison.Ordinal)).Except(after.Keys));
        Assert.All(before.Where(f => !f.Key.StartsWith("pass-", StringComparison.Ordinal)), f => Assert.Equal(f.Value, after[f.Key]));
    }

    [Theory]
    [InlineData("a printed lime rate", "lime.printed"), InlineData("a kind first", "seed.winter-wheat.weight")]
    public void What_is_added_has_a_code_of_its_own(string addition, string code)
    {
        Assert.Null(Sheet(Plan).Find(code));
        Assert.NotNull(Sheet(With(addition)).Find(code));
    }

    [Theory]
    [InlineData("Triple superphosphate", "triple-superphosphate"), InlineData("10-20-20", "10-20-20"), InlineData("the store's bag (fall)", "the-stores-bag-fall")]
    [InlineData("  ", "unnamed"), InlineData("Fl\u00E4chen", "fl\u00E4chen")]
    public void A_name_becomes_one_word(string name, string word) => Assert.Equal(word, FigureCode.Word(name));

    [Fact]
    public void What_has_the_very_name_of_another_is_told_apart()
    {
        var sheet = new SectionWriter("part", "Part");
        sheet.Figure("a.b", "one", "1", ImmutableOf);
        sheet.Figure("a.b", "two", "2", ImmutableOf);
        Assert.Equal(["a.b", "a.b-2"], sheet.Close().Blocks.OfType<SheetFigure>().Select(f => f.Code));
    }

    private static System.Collections.Immutable.ImmutableArray<WorkedLine> ImmutableOf => [];
}
