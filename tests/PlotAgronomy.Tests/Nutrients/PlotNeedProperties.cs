using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using PlotAgronomy.Nutrients;
using PlotAgronomy.Seeds;
using PlotAgronomy.Soil;
using PlotAgronomy.Tests.Support;
using static PlotAgronomy.Tests.Nutrients.NeedSamples;

namespace PlotAgronomy.Tests.Nutrients;

/// <summary>Laws of the need of a plot.</summary>
[Properties(Arbitrary = [typeof(PlotArbitraries), typeof(NeedArbitraries)])]
public class PlotNeedProperties
{
    [Property]
    public bool A_need_is_never_negative_and_limits_stand_in_order(BlendDraw draw, NonNegativeInt p, NonNegativeInt k) =>
        Need(draw, p.Get % 150, k.Get % 150).Targets.All(t => t.AtLeast.PoundsPerAcre >= 0 && (t.AtMost is not { } most || most >= t.AtLeast));

    [Property]
    public bool More_phosphorus_in_the_soil_never_raises_the_need(BlendDraw draw, NonNegativeInt p, PositiveInt more)
    {
        int low = p.Get % 150;
        return Need(draw, low + more.Get % 100, 20).Find(PlantNutrient.Phosphate)!.AtLeast <= Need(draw, low, 20).Find(PlantNutrient.Phosphate)!.AtLeast;
    }

    [Property]
    public bool The_order_of_the_kinds_does_not_matter(BlendDraw draw)
    {
        var reversed = draw with { Kinds = [.. draw.Kinds.AsEnumerable().Reverse()] };
        return Need(draw, 30, 30).Targets.Zip(Need(reversed, 30, 30).Targets).All(t =>
            t.First.Nutrient == t.Second.Nutrient && Near.Equal(t.First.AtLeast.PoundsPerAcre, t.Second.AtLeast.PoundsPerAcre, 1e-9));
    }

    [Property]
    public bool A_larger_legume_credit_never_raises_the_nitrogen(BlendDraw draw)
    {
        var small = LegumeCredit.Find("tennessee-cover").For(LegumeStand.Earlier);
        var large = LegumeCredit.Find("minnesota-alfalfa").For(LegumeStand.Earlier);
        double none = Nitrogen(draw, null);
        return Nitrogen(draw, small) <= none && Nitrogen(draw, large) <= Nitrogen(draw, small);
    }

    [Property]
    public bool A_legume_sown_together_changes_nothing(BlendDraw draw) =>
        Nitrogen(draw, LegumeCredit.Find("tennessee-cover").For(LegumeStand.SownTogether)) == Nitrogen(draw, null);

    [Property]
    public bool The_dressings_add_up_to_the_nitrogen(BlendDraw draw)
    {
        var need = Need(draw, 30, 30);
        return need.NitrogenDoses.IsEmpty || Near.Equal(need.Pounds(PlantNutrient.Nitrogen), need.NitrogenDoses.Sum(d => d.Low.PoundsPerAcre), 1e-12);
    }

    [Property]
    public bool Half_the_share_of_a_grain_alone_feeds_half_the_nitrogen(PositiveInt hundredths)
    {
        double share = (1 + hundredths.Get % 100) / 100.0;
        return Near.Equal(2 * PlotNeed.For(Request(Kind("oats-winter", share / 2))).Pounds(PlantNutrient.Nitrogen), PlotNeed.For(Request(Kind("oats-winter", share))).Pounds(PlantNutrient.Nitrogen), 1e-12);
    }

    [Property]
    public bool A_printed_rate_is_always_the_target(BlendDraw draw, ApplicationRate rate)
    {
        var request = Ask(draw, 30, 30, null, PrintedRecommendation.FromRates("North Carolina", "plot", PrintedRate.FromRate(PlantNutrient.Potash, rate)));
        return PlotNeed.For(request).Find(PlantNutrient.Potash)!.AtLeast == rate;
    }

    [Property]
    public bool Removal_grows_with_the_yield_and_animals_keep_only_a_part(PositiveInt tenths)
    {
        var figure = RemovalFigure.Find("kentucky-alfalfa-hay");
        double Potash(CropRemoval removal) => removal.Find(PlantNutrient.Potash)!.High.PoundsPerAcre;
        var yield = CropYield.FromTonsPerAcre(tenths.Get / 10.0);
        var twice = CropYield.FromTonsPerAcre(tenths.Get / 5.0);
        return Near.Equal(2 * Potash(CropRemoval.CarriedOff(figure, yield)), Potash(CropRemoval.CarriedOff(figure, twice)))
            && Potash(CropRemoval.Grazed(figure, yield, RetainedShare.Find("cattle"))) < Potash(CropRemoval.CarriedOff(figure, yield));
    }

    [Property]
    public bool An_element_printed_is_less_than_its_oxide(ApplicationRate rate) =>
        PrintedRate.FromElement(PlantNutrient.Phosphate, rate).Low >= rate && PrintedRate.FromElement(PlantNutrient.Potash, rate).Low >= rate;

    private static PlotNeed Need(BlendDraw draw, double p, double k) => PlotNeed.For(Ask(draw, p, k, null, null));

    private static double Nitrogen(BlendDraw draw, LegumeCreditAnswer? credit) => PlotNeed.For(Ask(draw, 30, 30, credit, null)).Pounds(PlantNutrient.Nitrogen);

    private static PlotNeedRequest Ask(BlendDraw draw, double p, double k, LegumeCreditAnswer? credit, PrintedRecommendation? printed) => new()
    {
        Soil = NorthCarolina(p, k),
        Kinds = [.. draw.Kinds],
        System = RecommendationSystem.NorthCarolina,
        SecondaryRules = [],
        LegumeCredit = credit,
        Printed = printed,
    };
}
