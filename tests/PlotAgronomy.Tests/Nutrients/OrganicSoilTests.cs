using PlotAgronomy.Nutrients;
using PlotAgronomy.Planning;
using PlotAgronomy.Soil;
using PlotAgronomy.Tests.Support;
using static PlotAgronomy.Tests.Nutrients.NeedSamples;

namespace PlotAgronomy.Tests.Nutrients;

/// <summary>Muck and peat go by their own rules or by none; what nobody rates is said to be unrated.</summary>
public class OrganicSoilTests
{
    private static SoilReport Muck(double organicMatter, SoilClass? printed = null) => new()
    {
        Laboratory = "Michigan",
        SoilClass = printed,
        OrganicMatter = Fraction.FromPercent(organicMatter),
        PrintedExchangeCapacity = CationCharge.FromMilliequivalentsPer100Grams(85),
        Readings = [SystemRequests.P(12, SoilTestUnit.PartsPerMillion, Extractant.Mehlich3), SystemRequests.K(80, SoilTestUnit.PartsPerMillion, Extractant.Mehlich3)],
    };

    /// <summary>Published: organic soil is more than 20 % organic matter (the limit of the lime tables); the mineral equation would ask for (1 + 0.05 x 85) x 40 =
    /// 210 lb K2O on it.</summary>
    [Theory]
    [InlineData(19.9, AnswerState.Given), InlineData(20, AnswerState.Given), InlineData(20.1, AnswerState.Open), InlineData(62, AnswerState.Open)]
    public void A_mineral_equation_is_not_asked_on_muck(double organicMatter, AnswerState state)
    {
        var need = PlotNeed.For(With(RecommendationSystem.Find("TS-2020"), Muck(organicMatter), Kind("rape-dwarf-essex", 1)));
        Assert.Equal(state, need.StateOf(PlantNutrient.Potash));
        Assert.Equal(state == AnswerState.Open, need.Has(NutrientCodes.OrganicSoil));
        Assert.Equal(state == AnswerState.Open, need.Has(NutrientCodes.NitrogenOrganicSoil));
    }

    [Fact]
    public void What_the_laboratory_calls_the_soil_goes_before_its_organic_matter()
    {
        Assert.Equal(AnswerState.Given, PlotNeed.For(With(RecommendationSystem.Find("TS-2020"), Muck(40, SoilClass.Mineral), Kind("rape-dwarf-essex", 1))).StateOf(PlantNutrient.Potash));
        Assert.Equal(AnswerState.Open, PlotNeed.For(With(RecommendationSystem.Find("TS-2020"), Muck(10, SoilClass.Organic), Kind("rape-dwarf-essex", 1))).StateOf(PlantNutrient.Potash));
    }

    /// <summary>Published: North Carolina prints its own equation (18) for phosphorus on organic soil, 29.7 lb at index 35.</summary>
    [Fact]
    public void A_system_with_a_row_for_organic_soil_answers()
    {
        var report = new SoilReport { Laboratory = "North Carolina", SoilClass = SoilClass.Organic, Readings = [SystemRequests.PIndex(35), SystemRequests.KIndex(35)] };
        Assert.Equal(29.7, PlotNeed.For(With(RecommendationSystem.NorthCarolina, report, Kind("oats-winter", 1))).Pounds(PlantNutrient.Phosphate), 0.05);
    }

    /// <summary>Published: Clemson rates no boron; 0.15 ppm by Mehlich-1 is not held against a limit for hot water.</summary>
    [Theory]
    [InlineData(Extractant.Mehlich1, false), InlineData(Extractant.Mehlich3, false), InlineData(Extractant.NotStated, false), InlineData(Extractant.HotWater, true)]
    public void Boron_by_another_extractant_is_not_judged(Extractant extractant, bool isJudged)
    {
        var report = NorthCarolina(more: SoilReading.FromPrinted(SoilAnalyte.Boron, 0.15, SoilTestUnit.PartsPerMillion, extractant));
        Assert.Equal(isJudged, SecondaryRule.PlotBoron.Answer(report).IsNeeded is not null);
    }

    /// <summary>A limit whose rule names no extractant judges no reading that names one.</summary>
    [Theory]
    [InlineData(Extractant.NotStated, true), InlineData(Extractant.Mehlich1, false), InlineData(Extractant.HotWater, false)]
    public void A_limit_without_an_extractant_takes_no_named_one(Extractant extractant, bool isTaken)
    {
        var report = NorthCarolina(more: SoilReading.FromPrinted(SoilAnalyte.Boron, 0.7, SoilTestUnit.PoundsPerAcre, extractant));
        Assert.Equal(isTaken, SecondaryRule.Find("tennessee-boron-soybean").Answer(report).IsNeeded is not null);
    }

    [Fact]
    public void What_no_system_rates_is_said_and_what_is_low_without_a_rate_too()
    {
        SoilReading[] more =
        [
            SoilReading.FromPrinted(SoilAnalyte.Sulfur, 18, SoilTestUnit.NorthCarolinaIndex, Extractant.Mehlich3),
            SoilReading.FromPrinted(SoilAnalyte.Iron, 40, SoilTestUnit.PartsPerMillion, Extractant.Mehlich3),
        ];
        var report = NorthCarolina(more: more);
        var found = UnjudgedReadings.Of(report, RatingSystem.NorthCarolina.Rate(report), []).ToList();
        Assert.Equal([NutrientCodes.ReadingUnrated, NutrientCodes.RatedLow], found.Select(f => f.Code));
        Assert.Contains("iron 40 ppm", found[0].Text, StringComparison.Ordinal);
        Assert.StartsWith("Sulfur is low by North Carolina", found[1].Text, StringComparison.Ordinal);
        Assert.Empty(UnjudgedReadings.Of(report, null, [SoilAnalyte.Sulfur, SoilAnalyte.Iron]));
    }

    /// <summary>Published grid: at printed rating "low" and potassium medium small grain gets 80 lb P2O5; no phosphorus reading is invented for it.</summary>
    [Fact]
    public void A_printed_rating_of_phosphorus_is_enough_in_South_Carolina()
    {
        var report = new SoilReport
        {
            Laboratory = "South Carolina",
            PrintedPhosphorusRating = "low",
            Readings = [SystemRequests.K(100, SoilTestUnit.PoundsPerAcre, Extractant.Mehlich1)],
        };
        var answer = RecommendationSystem.Find("SC").Recommend(report, CropUse.Browsed(CropRow.SmallGrain));
        Assert.Equal(80, answer.Phosphate!.Rate.PoundsPerAcre);
        Assert.NotEmpty(answer.ShowWork());
        var without = new SoilReport { Laboratory = "South Carolina", Readings = report.Readings };
        Assert.Null(RecommendationSystem.Find("SC").Recommend(without, CropUse.Browsed(CropRow.SmallGrain)).Phosphate);
    }

    [Fact]
    public void A_use_of_what_is_not_sown_is_refused_by_its_name()
    {
        var request = new PlotNeedRequest
        {
            Soil = NorthCarolina(),
            Kinds = [Kind("soybean-grain", 1)],
            System = RecommendationSystem.NorthCarolina,
            Uses = System.Collections.Immutable.ImmutableDictionary<string, KindUse>.Empty.Add("soybeans", new KindUse { IsCarriedOff = true, Yield = CropYield.FromBushelsPerAcre(40) }),
        };
        Assert.Contains("'soybeans' is none of the kinds: soybean-grain", Assert.Throws<ArgumentException>(() => PlotNeed.For(request)).Message, StringComparison.Ordinal);
    }
}
