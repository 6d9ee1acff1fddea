using System.Collections.Immutable;
using PlotAgronomy.Nutrients;
using PlotAgronomy.Reference;
using PlotAgronomy.Seeds;
using PlotAgronomy.Soil;
using PlotAgronomy.Tests.Support;
using static PlotAgronomy.Tests.Nutrients.NeedSamples;

namespace PlotAgronomy.Tests.Nutrients;

public class PlotNeedTests
{
    private static SoilReport TriState(double p = 35, double k = 140) => new()
    {
        Laboratory = "Ohio",
        PrintedExchangeCapacity = CationCharge.FromMilliequivalentsPer100Grams(10),
        Readings = [SystemRequests.P(p, SoilTestUnit.PartsPerMillion, Extractant.Mehlich3), SystemRequests.K(k, SoilTestUnit.PartsPerMillion, Extractant.Mehlich3)],
    };

    private static ApplicationRate Rate(double pounds) => ApplicationRate.FromPoundsPerAcre(pounds);

    /// <summary>Hand algebra on published figures: North Carolina index 25 and 15 give 88.5 and 111.4; oat 30-40 x 0.5 + rape 60-100 x 0.3 = 33 to 50 lb N.</summary>
    [Fact]
    public void A_blend_of_one_row_takes_its_figure_and_feeds_nitrogen_by_share()
    {
        var need = PlotNeed.For(Request(Kind("medium-red-clover", 0.3), Kind("oats-winter", 0.5), Kind("rape-dwarf-essex", 0.3)));
        Assert.Equal(88.5, need.Pounds(PlantNutrient.Phosphate), 0.05);
        Assert.Equal(111.4, need.Pounds(PlantNutrient.Potash), 0.05);
        Assert.Equal(33, need.Pounds(PlantNutrient.Nitrogen), 1e-9);
        Assert.Equal(50, need.Find(PlantNutrient.Nitrogen)!.AtMost!.Value.PoundsPerAcre, 1e-9);
    }

    /// <summary>Hand algebra: two full stands together count as one, (30 + 60) / 2 to (40 + 100) / 2.</summary>
    [Fact]
    public void Shares_above_one_full_stand_feed_one_full_stand()
    {
        var target = PlotNeed.For(Request(Kind("oats-winter", 1), Kind("rape-dwarf-essex", 1))).Find(PlantNutrient.Nitrogen)!;
        Assert.Equal(45, target.AtLeast.PoundsPerAcre, 1e-9);
        Assert.Equal(70, target.AtMost!.Value.PoundsPerAcre, 1e-9);
    }

    [Fact]
    public void Inoculated_legumes_alone_need_no_nitrogen()
    {
        var need = PlotNeed.For(Request(Kind("ladino-clover", 0.5), Kind("medium-red-clover", 0.5)));
        Assert.Equal(0, need.Pounds(PlantNutrient.Nitrogen));
        Assert.Empty(need.NitrogenDoses);
        Assert.False(need.Has("nutrient-nitrogen-on-legume"));
    }

    [Fact]
    public void Nitrogen_asked_for_on_legumes_is_a_finding()
    {
        var request = new PlotNeedRequest
        {
            Soil = NorthCarolina(),
            Kinds = [Kind("ladino-clover", 1)],
            System = RecommendationSystem.NorthCarolina,
            SecondaryRules = [],
            Overrides = [NutrientTarget.Create(PlantNutrient.Nitrogen, Rate(50), null, "asked for")],
        };
        Assert.True(PlotNeed.For(request).Has("nutrient-nitrogen-on-legume"));
    }

    [Fact]
    public void Legumes_without_inoculant_may_get_a_starter()
    {
        var request = new PlotNeedRequest
        {
            Soil = NorthCarolina(),
            Kinds = [Kind("cowpea-iron-clay", 1)],
            System = RecommendationSystem.NorthCarolina,
            SecondaryRules = [],
            LegumesAreInoculated = false,
        };
        var need = PlotNeed.For(request);
        Assert.Equal(20, need.Find(PlantNutrient.Nitrogen)!.AtMost!.Value.PoundsPerAcre, 1e-9);
        Assert.True(need.Has("nutrient-nitrogen-uninoculated"));
    }

    /// <summary>Hand algebra: 60 lb left by a standing clover, oats 90 lb by name: 90 - 60 = 30; a legume sown together leaves nothing.</summary>
    [Theory]
    [InlineData(LegumeStand.Existing, 30), InlineData(LegumeStand.SownTogether, 90)]
    public void Only_a_legume_that_grew_there_before_is_credited(LegumeStand stand, double expected)
    {
        var request = new PlotNeedRequest
        {
            Soil = NorthCarolina(),
            Kinds = [Kind("oats-winter", 1), Kind("medium-red-clover", 0.3)],
            System = RecommendationSystem.NorthCarolina,
            SecondaryRules = [],
            Uses = ImmutableDictionary<string, KindUse>.Empty.Add("oats-winter", new KindUse { Nitrogen = NitrogenRule.Find("south-carolina-small-grain") }),
            LegumeCredit = LegumeCredit.Find("tennessee-clover-in-grass").For(stand),
        };
        var need = PlotNeed.For(request);
        Assert.Equal(expected, need.Pounds(PlantNutrient.Nitrogen), 1e-9);
        Assert.Equal(stand == LegumeStand.SownTogether, need.Has("nutrient-legume-sown-together"));
    }

    [Fact]
    public void A_credit_larger_than_the_need_leaves_none()
    {
        var request = new PlotNeedRequest
        {
            Soil = NorthCarolina(),
            Kinds = [Kind("oats-winter", 1)],
            System = RecommendationSystem.NorthCarolina,
            SecondaryRules = [],
            LegumeCredit = LegumeCredit.Find("minnesota-alfalfa").For(LegumeStand.Earlier),
        };
        Assert.Equal(0, PlotNeed.For(request).Pounds(PlantNutrient.Nitrogen));
    }

    /// <summary>The case to protect: 5 ton of alfalfa hay carry off 275 lb K2O (University of Kentucky); a browsed clover plot loses none of it.</summary>
    [Fact]
    public void Hay_potash_is_not_put_on_a_browsed_clover_plot()
    {
        var report = TriState();
        var clover = Kind("ladino-clover", 1);
        var browsed = PlotNeed.For(With(RecommendationSystem.Find("TS-2020"), report, clover));
        var hay = PlotNeed.For(new PlotNeedRequest
        {
            Soil = report,
            Kinds = [clover],
            System = RecommendationSystem.Find("TS-2020"),
            SecondaryRules = [],
            Uses = ImmutableDictionary<string, KindUse>.Empty.Add("ladino-clover", new KindUse { TakenAs = CropRow.Alfalfa, IsCarriedOff = true, Yield = CropYield.FromTonsPerAcre(4) }),
        });
        Assert.Equal(0, browsed.Pounds(PlantNutrient.Potash));
        Assert.True(browsed.Has("nutrient-removal-ignored"));
        // The state's summary of the 2020 edition: alfalfa above the critical level gets less than its removal; (196 + 20) x (170 - 140) / 50 by the taper from memory.
        Assert.Equal(129.6, hay.Pounds(PlantNutrient.Potash), 1e-9);
        Assert.Equal(48, hay.Pounds(PlantNutrient.Phosphate), 1e-9);
        Assert.Equal(0, CropRemoval.Browsed.Find(PlantNutrient.Potash)!.High.PoundsPerAcre);
    }

    [Fact]
    public void A_crop_carried_off_asks_for_its_yield()
    {
        var request = new PlotNeedRequest
        {
            Soil = NorthCarolina(),
            Kinds = [Kind("alfalfa", 1)],
            System = RecommendationSystem.NorthCarolina,
            SecondaryRules = [],
            Uses = ImmutableDictionary<string, KindUse>.Empty.Add("alfalfa", new KindUse { IsCarriedOff = true }),
        };
        Assert.Contains("never assumed", Assert.Throws<ArgumentException>(() => PlotNeed.For(request)).Message, StringComparison.Ordinal);
    }

    /// <summary>Published shares on hand algebra: cattle keep 20 % and 15 % of the 56 lb P2O5 and 220 lb K2O of 4 ton, at maintenance with the system's 20 lb of potash on top, tapered for alfalfa by (170 - 140) / 50.</summary>
    [Fact]
    public void A_grazed_plot_is_given_back_only_what_the_animals_keep()
    {
        var report = TriState();
        var yield = CropYield.FromTonsPerAcre(4);
        PlotNeed With(CropRemoval removal) => PlotNeed.For(new PlotNeedRequest
        {
            Soil = report,
            Kinds = [Kind("alfalfa", 1)],
            System = RecommendationSystem.Find("TS-2020"),
            SecondaryRules = [],
            Uses = ImmutableDictionary<string, KindUse>.Empty.Add("alfalfa", new KindUse { Yield = yield, Removal = removal }),
        });
        var grazed = With(CropRemoval.Grazed(RemovalFigure.Find("kentucky-alfalfa-hay"), yield, RetainedShare.Find("cattle")));
        Assert.Equal(11.2, grazed.Pounds(PlantNutrient.Phosphate), 1e-9);
        Assert.Equal(31.8, grazed.Pounds(PlantNutrient.Potash), 1e-9);
        Assert.Equal(0, With(CropRemoval.Browsed).Pounds(PlantNutrient.Potash));
        Assert.Throws<ArgumentException>(() => With(CropRemoval.CarriedOff(RemovalFigure.Find("ontario-alfalfa-sulfur"), yield)));
    }

    [Fact]
    public void Corn_without_a_yield_gets_no_nitrogen_figure_and_says_why()
    {
        var need = PlotNeed.For(Request(Kind("corn", 1)));
        Assert.Null(need.Find(PlantNutrient.Nitrogen));
        Assert.True(need.Has("nutrient-nitrogen-yield-needed"));
    }

    [Theory]
    [InlineData(0.19, false), InlineData(0.2, true), InlineData(0.21, true)]
    public void A_kind_counts_from_a_fifth_of_a_full_stand(double share, bool counts) =>
        Assert.Equal(counts, PlotNeed.For(Request(Kind("oats-winter", 0.8), Kind("medium-red-clover", share))).Components[1].Counts);

    [Fact]
    public void When_no_kind_reaches_the_share_all_count()
    {
        var need = PlotNeed.For(Request(Kind("oats-winter", 0.1), Kind("medium-red-clover", 0.1)));
        Assert.All(need.Components, c => Assert.True(c.Counts));
        Assert.True(need.Has("nutrient-no-share-counts"));
    }

    [Fact]
    public void A_kind_is_taken_as_the_nearest_row_and_can_be_taken_as_another()
    {
        var report = TriState(10, 100);
        var clover = Kind("ladino-clover", 1);
        var nearest = PlotNeed.For(With(RecommendationSystem.Find("TS-2020"), report, clover));
        Assert.Equal(CropRow.Alfalfa, nearest.Components[0].PhosphateRow);
        Assert.Contains(nearest.Findings, f => f.Code == "nutrient-taken-as" && f.Text.Contains("alfalfa", StringComparison.Ordinal));
        // Build-up by hand: alfalfa (30 - 10) x 5 = 100, soybean (20 - 10) x 5 = 50.
        Assert.Equal(100, nearest.Pounds(PlantNutrient.Phosphate), 1e-9);
        var other = PlotNeed.For(new PlotNeedRequest
        {
            Soil = report,
            Kinds = [clover],
            System = RecommendationSystem.Find("TS-2020"),
            SecondaryRules = [],
            Uses = ImmutableDictionary<string, KindUse>.Empty.Add("ladino-clover", new KindUse { TakenAs = CropRow.Soybean }),
        });
        Assert.Equal(50, other.Pounds(PlantNutrient.Phosphate), 1e-9);
        Assert.False(other.Has("nutrient-taken-as"));
    }

    /// <summary>A wildlife row is for a plot whatever is sown there, and corn is corn: nothing stands in for them.</summary>
    [Theory]
    [InlineData("NC", "crimson-clover", false)]
    [InlineData("NC", "corn", false)]
    [InlineData("TS-2020", "corn", false)]
    [InlineData("TS-2020", "winter-wheat", false)]
    [InlineData("TS-2020", "crimson-clover", true)]
    [InlineData("TS-2020", "purple-top-turnip", true)]
    public void Only_a_row_that_stands_in_for_a_kind_is_said_to(string system, string kind, bool standsIn) =>
        Assert.Equal(standsIn, PlotNeed.For(With(RecommendationSystem.Find(system), NorthCarolina(), Kind(kind, 1))).Has("nutrient-taken-as"));

    [Fact]
    public void The_reason_reads_as_sentences_and_names_the_row()
    {
        var need = PlotNeed.For(Request(Kind("oats-winter", 0.5), Kind("crimson-clover", 0.5)));
        Assert.Equal(
            "Phosphorus at index 25 is low; by the state's equation 14 for mineral soil this much is due, give or take 10 lb/ac. It is read from the wildlife plot row (deer and turkey food plot). The printed range is 78.5 to 98.5 lb/ac.",
            need.Find(PlantNutrient.Phosphate)!.Reason);
        Assert.All(need.Targets, t => Assert.Matches("^[A-Z].*\\.$", t.Reason));
    }

    [Fact]
    public void Ours_stands_in_the_reason_beside_the_printed_rate()
    {
        var need = PlotNeed.For(new PlotNeedRequest
        {
            Soil = NorthCarolina(),
            Kinds = [Kind("oats-winter", 1)],
            System = RecommendationSystem.NorthCarolina,
            SecondaryRules = [],
            Printed = PrintedRecommendation.FromRates("a laboratory", "clover", PrintedRate.FromRate(PlantNutrient.Potash, Rate(100))),
        });
        Assert.Equal("Printed by a laboratory for clover; North Carolina index equations would ask for 111.4 lb/ac.", need.Find(PlantNutrient.Potash)!.Reason);
    }

    [Fact]
    public void That_nothing_is_carried_off_is_said_once()
    {
        var need = PlotNeed.For(With(RecommendationSystem.Find("TS-2020"), TriState(), Kind("ladino-clover", 1)));
        Assert.True(need.Has("nutrient-removal-ignored"));
        Assert.False(need.Has("nutrient-nothing-carried-off"));
    }

    [Fact]
    public void A_kind_no_row_is_near_to_does_not_count_and_says_so() =>
        Assert.True(PlotNeed.For(With(RecommendationSystem.Find("NI"), NorthCarolina(), Kind("corn", 1))).Has("nutrient-kind-without-row"));

    [Fact]
    public void One_institutions_test_with_anothers_rates_is_a_finding()
    {
        Assert.False(PlotNeed.For(Request(Kind("oats-winter", 1))).Has("nutrient-institutions-mixed"));
        Assert.True(PlotNeed.For(With(RecommendationSystem.Find("TS-2020"), NorthCarolina(), Kind("oats-winter", 1))).Has("nutrient-institutions-mixed"));
    }

    [Fact]
    public void A_boron_sensitive_kind_sets_the_limit()
    {
        var report = NorthCarolina(more: SoilReading.FromPrinted(SoilAnalyte.Boron, 0.2, SoilTestUnit.PartsPerMillion, Extractant.HotWater));
        PlotNeed Need(params KindShare[] kinds) => PlotNeed.For(new PlotNeedRequest
        {
            Soil = report,
            Kinds = [.. kinds],
            System = RecommendationSystem.NorthCarolina,
            SecondaryRules = [SecondaryRule.Find("tennessee-boron-alfalfa"), SecondaryRule.PlotBoron],
        });
        Assert.Equal(2, Need(Kind("alfalfa", 1)).Pounds(PlantNutrient.Boron), 1e-9);
        var mixed = Need(Kind("alfalfa", 0.6), Kind("oats-winter", 0.4));
        Assert.Equal(1, mixed.Pounds(PlantNutrient.Boron), 1e-9);
        Assert.True(mixed.Has("nutrient-boron-sensitive-kind"));
        Assert.True(mixed.Has("nutrient-boron-toxicity"));
    }

    [Fact]
    public void Dressings_of_nitrogen_add_up_and_follow_the_leading_kind()
    {
        var need = PlotNeed.For(Request(Kind("rape-dwarf-essex", 1)));
        Assert.Equal(["at seeding", "30 to 45 days later"], need.NitrogenDoses.Select(d => d.When));
        Assert.Equal(60, need.NitrogenDoses.Sum(d => d.Low.PoundsPerAcre), 1e-9);
        Assert.False(need.Has("nutrient-nitrogen-single-dose"));
        Assert.True(need.Has("nutrient-urea-needs-rain"));
    }

    [Fact]
    public void The_working_shows_every_kind_and_every_target()
    {
        var lines = PlotNeed.For(Request(Kind("oats-winter", 0.8), Kind("medium-red-clover", 0.1))).ShowWork().Select(l => l.ToString()).ToList();
        Assert.Contains(lines, l => l.Contains("red clover", StringComparison.OrdinalIgnoreCase) && l.Contains("0.1 of a full stand", StringComparison.Ordinal));
        Assert.Contains(lines, l => l.StartsWith("Target P2O5", StringComparison.Ordinal));
        Assert.Contains(lines, l => l.Contains("30 to 40 x 0.8 = 24 to 32 lb/ac", StringComparison.Ordinal));
    }

    [Fact]
    public void A_request_is_checked_once()
    {
        Assert.Throws<ArgumentNullException>(() => PlotNeed.For(null!));
        Assert.Throws<ArgumentException>(() => PlotNeed.For(Request()));
        Assert.Throws<ArgumentException>(() => PlotNeed.For(Request(Kind("corn", 0.5), Kind("corn", 0.5))));
        Assert.Throws<ArgumentOutOfRangeException>(() => PlotNeed.For(new PlotNeedRequest { Soil = NorthCarolina(), Kinds = [Kind("corn", 1)], System = RecommendationSystem.NorthCarolina, CountedFromShare = double.NaN }));
        Assert.Throws<ArgumentOutOfRangeException>(() => PlotNeed.For(new PlotNeedRequest { Soil = NorthCarolina(), Kinds = [Kind("corn", 1)], System = RecommendationSystem.NorthCarolina, CountedFromShare = -0.01 }));
        var twice = NutrientTarget.Create(PlantNutrient.Zinc, Rate(1), null, "twice");
        Assert.Throws<ArgumentException>(() => PlotNeed.For(new PlotNeedRequest { Soil = NorthCarolina(), Kinds = [Kind("corn", 1)], System = RecommendationSystem.NorthCarolina, Overrides = [twice, twice] }));
    }

    [Fact]
    public void A_need_can_be_stated()
    {
        var need = PlotNeed.Stated(NutrientTarget.Create(PlantNutrient.Potash, Rate(60), null, "mine"), NutrientTarget.Create(PlantNutrient.Nitrogen, Rate(30), Rate(40), "mine"));
        Assert.Equal([PlantNutrient.Nitrogen, PlantNutrient.Potash], need.Targets.Select(t => t.Nutrient));
        Assert.Equal(2, need.ShowWork().Length);
        Assert.Throws<ArgumentException>(() => PlotNeed.Stated());
        Assert.Throws<ArgumentException>(() => PlotNeed.Stated(need.Targets[0], need.Targets[0]));
    }

    [Fact]
    public void A_target_has_a_reason_and_limits_in_order()
    {
        Assert.Throws<ArgumentException>(() => NutrientTarget.Create(PlantNutrient.Zinc, Rate(1), null, " "));
        Assert.Throws<ArgumentOutOfRangeException>(() => NutrientTarget.Create(PlantNutrient.Zinc, Rate(2), Rate(1.999), "limits crossed"));
        Assert.Equal(2, NutrientTarget.Create(PlantNutrient.Zinc, Rate(2), Rate(2), "one figure").AtMost!.Value.PoundsPerAcre);
        Assert.Throws<ArgumentOutOfRangeException>(() => NutrientTarget.Create((PlantNutrient)99, Rate(2), null, "no such nutrient"));
    }

    [Theory, MemberData(nameof(CultureScope.Treacherous), MemberType = typeof(CultureScope))]
    public void Numbers_and_text_do_not_follow_the_culture(string culture)
    {
        using var scope = new CultureScope(culture);
        var need = PlotNeed.For(Request(Kind("oats-winter", 0.5), Kind("rape-dwarf-essex", 0.5)));
        Assert.Equal(88.5, need.Pounds(PlantNutrient.Phosphate), 0.05);
        Assert.Contains(need.ShowWork(), l => l.ToString().Contains("88.5", StringComparison.Ordinal));
        Assert.Equal("zinc 2.5 to 3.5 lb/ac: text", NutrientTarget.Create(PlantNutrient.Zinc, Rate(2.5), Rate(3.5), "text").ToString());
    }
}
