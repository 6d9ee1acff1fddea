using PlotAgronomy.Nutrients;
using PlotAgronomy.Soil;
using static PlotAgronomy.Tests.Nutrients.NeedSamples;

namespace PlotAgronomy.Tests.Nutrients;

/// <summary>Nitrogen and potash in their season, and alfalfa above its critical level.</summary>
public class SeasonTests
{
    /// <summary>Published: on a food plot of small grain 30 to 40 lb N, none before planting, half after emergence, the rest in December.</summary>
    [Fact]
    public void Half_of_the_grains_nitrogen_waits_for_emergence_and_none_goes_before_the_seed()
    {
        var need = PlotNeed.For(Request(Kind("oats-winter", 1)));
        Assert.Equal([DressingTime.AfterEmergence, DressingTime.Later], need.NitrogenDoses.Select(d => d.Time));
        Assert.Equal([15, 15], need.NitrogenDoses.Select(d => d.Low.PoundsPerAcre));
        Assert.Contains(need.Findings, f => f.Code == NutrientCodes.NitrogenDressings && f.Text == "Nitrogen in its season: 15 to 20 lb/ac after emergence, then 15 to 20 lb/ac in December. By that rule none of it goes on before or with the seed.");
    }

    [Fact]
    public void Forage_brassicas_get_their_second_half_later()
    {
        var need = PlotNeed.For(Request(Kind("rape-dwarf-essex", 1)));
        Assert.Equal([DressingTime.AtSowing, DressingTime.Later], need.NitrogenDoses.Select(d => d.Time));
        Assert.Contains(need.Findings, f => f.Code == NutrientCodes.NitrogenDressings && f.Text.EndsWith("By that rule 30 to 50 lb/ac goes on before or with the seed.", StringComparison.Ordinal));
    }

    /// <summary>Practice: potash is split where the exchange capacity is 3 meq/100 g or less; just above it is not.</summary>
    [Theory]
    [InlineData(2.99, true), InlineData(3, true), InlineData(3.01, false)]
    public void Potash_is_split_on_a_soil_that_holds_little(double capacity, bool isSplit)
    {
        var soil = NorthCarolina() with { PrintedExchangeCapacity = CationCharge.FromMilliequivalentsPer100Grams(capacity) };
        var need = PlotNeed.For(With(RecommendationSystem.NorthCarolina, soil, Kind("oats-winter", 1)));
        Assert.Equal(isSplit, need.IsPotashSplit);
        Assert.Equal(isSplit, need.Findings.Any(f => f.Code == NutrientCodes.PotashSplit && f.Text.Contains("half of it (56 lb K2O/ac)", StringComparison.Ordinal)));
    }

    /// <summary>Published: Clemson prints 90 lb N for small grain; Mississippi's 30 to 40 for a food plot are used, and that is said.</summary>
    [Fact]
    public void The_systems_own_nitrogen_is_not_passed_over_in_silence()
    {
        var report = new SoilReport { Laboratory = "South Carolina", PrintedPhosphorusRating = "low", Readings = [SystemRequests.K(100, SoilTestUnit.PoundsPerAcre, Extractant.Mehlich1)] };
        var need = PlotNeed.For(With(RecommendationSystem.Find("SC"), report, Kind("oats-winter", 1)));
        Assert.Contains(need.Findings, f => f.Code == NutrientCodes.NitrogenDiffers && f.Text.Contains("prints 90 lb N/ac for small grain", StringComparison.Ordinal));
    }

    /// <summary>The state's summary of the edition of 2020: the maintenance rule does not hold for alfalfa. By hand with the taper: 4 ton at 49 lb and 20 lb are 216
    /// lb at the critical level of 120 ppm, half of it halfway to the limit of 170, none at it.</summary>
    [Theory]
    [InlineData(120, 216), InlineData(121, 211.68), InlineData(145, 108), InlineData(169, 4.32), InlineData(170, 0), InlineData(171, 0)]
    public void Alfalfa_above_the_critical_level_gets_less_than_its_removal(double ppm, double pounds)
    {
        var report = new SoilReport
        {
            Laboratory = "Ohio",
            PrintedExchangeCapacity = CationCharge.FromMilliequivalentsPer100Grams(10),
            Readings = [SystemRequests.K(ppm, SoilTestUnit.PartsPerMillion, Extractant.Mehlich3)],
        };
        var need = RecommendationSystem.Find("TS-2020").Recommend(report, CropUse.CarriedOff(CropRow.Alfalfa, CropYield.FromTonsPerAcre(4))).Potash!;
        Assert.Equal(pounds, need.Rate.PoundsPerAcre, 1e-9);
        Assert.Equal(0, RecommendationSystem.Find("TS-2020").Recommend(report, CropUse.Browsed(CropRow.Alfalfa)).Potash!.Rate.PoundsPerAcre);
    }
}
