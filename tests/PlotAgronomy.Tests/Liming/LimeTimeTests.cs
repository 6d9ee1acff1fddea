using PlotAgronomy.Liming;
using PlotAgronomy.Seeds;
using PlotAgronomy.Soil;
using UnitsNet;
using static PlotAgronomy.Tests.Liming.LimeSamples;

namespace PlotAgronomy.Tests.Liming;

public class LimeTimeTests
{
    private static readonly SieveAnalysis Sieves = SieveAnalysis.FromPercent((20, 80), (60, 55), (100, 42));
    private static readonly LimingMaterial Lime = LimingMaterial.FromAnalysis("lime", LimingForm.GroundLimestone, 92, Sieves);

    private static LimeOutlook Outlook(int months, LimePlacement placement = LimePlacement.WorkedIn, LimingMaterial? material = null, double tons = 2, CationCharge? capacity = null, SoilTexture? texture = null, params CropKind[] kinds) =>
        LimeOutlook.For(new LimeOutlookRequest
        {
            Soil = PlotSoil.For(Report(5.5)) with { ExchangeCapacity = capacity, Texture = texture },
            Rate = Rate(tons, targetPh: 6.5),
            Material = material ?? Lime,
            Placement = placement,
            LimedOn = new DateOnly(2027, 1, 1),
            PlantingOn = new DateOnly(2027, 1, 1).AddMonths(months),
            Kinds = [.. kinds],
        });

    [Fact]
    public void The_share_worked_in_a_year_is_the_institutions()
    {
        // Cornell soil pH and liming competencies: finer than 100 mesh 100 %, 60-100 80 %, 20-60 40 % in the first year.
        var year = LimeReaction.After(Lime, 12);
        Assert.Equal(0.42 + (0.8 * 0.13) + (0.4 * 0.25), year.Low.Value, 1e-12);
        Assert.Equal(year.Low.Value, year.High.Value, 1e-12);
        Assert.True(year.FinenessKnown);
    }

    [Fact]
    public void Fine_lime_has_worked_after_two_to_three_months()
    {
        // Ohio Department of Agriculture: the fine fraction works in 2-3 months.
        var powder = LimingMaterial.FromAnalysis("powder", LimingForm.GroundLimestone, 100, SieveAnalysis.FromPercent((100, 100)));
        Assert.Equal(1, LimeReaction.After(powder, 3).Low.Value, 1e-12);
        Assert.Equal(1, LimeReaction.After(powder, 2).High.Value, 1e-12);
        Assert.Equal(2.0 / 3, LimeReaction.After(powder, 2).Low.Value, 1e-12);
    }

    [Fact]
    public void Unknown_fineness_is_a_range_that_a_year_does_not_close()
    {
        var unknown = LimingMaterial.FromAnalysis("lime", LimingForm.GroundLimestone, 92);
        var half = LimeReaction.After(unknown, 6);
        Assert.False(half.FinenessKnown);
        // By hand: the legal ground grade has 40 % through 100 mesh, all of it at work; 10 % x 0.8 and 20 % x 0.4 half-way.
        Assert.Equal(0.40 + (0.10 * 0.8 / 2) + (0.20 * 0.4 / 2), half.Low.Value, 1e-12);
        Assert.Equal(0.56, LimeReaction.After(unknown, 12).Low.Value, 1e-12);
        Assert.Equal(1, LimeReaction.After(unknown, 12).High.Value);
        Assert.Equal(0.5, LimeReaction.After(LimingMaterial.FromAnalysis("burnt lime", LimingForm.Quicklime, 170), 6).Low.Value, 1e-12);
        Assert.Equal(1, half.High.Value, 1e-12);
        Assert.Equal(0, LimeReaction.After(LimingMaterial.Gypsum, 12).High.Value);
    }

    [Fact]
    public void The_pH_on_planting_day_lies_between_todays_and_the_target()
    {
        var outlook = Outlook(12);
        // By hand: 1 pH x 0.624, and the error of a reading (0.1, LIME-S38) on both sides.
        Assert.Equal(5.5 + 0.624 - 0.1, outlook.ExpectedPhLow, 1e-3);
        Assert.InRange(outlook.ExpectedPhHigh, outlook.ExpectedPhLow + 0.2 - 1e-9, 6.6);
        Assert.Equal(0.624, outlook.WorkedInAYear.Low.Value, 1e-9);
        Assert.False(outlook.Has("lime-too-young"));
        Assert.Equal(5.4, Outlook(12, LimePlacement.Surface).ExpectedPhLow, 1e-9);
        Assert.True(Outlook(12, LimePlacement.Surface).Has("lime-surface-slow"));
    }

    /// <summary>Lime starts to work after three to six months (LIME-S17); a quarter of a year has 91.3 days.</summary>
    [Theory]
    [InlineData(1, true)]
    [InlineData(91, true)]
    [InlineData(92, false)]
    [InlineData(120, false)]
    public void Planting_within_three_months_is_too_soon(int days, bool tooSoon)
    {
        var limed = new DateOnly(2027, 1, 1);
        var outlook = LimeOutlook.For(new LimeOutlookRequest
        {
            Soil = PlotSoil.For(Report(5.5)),
            Rate = Rate(2, targetPh: 6.5),
            Material = Lime,
            Placement = LimePlacement.WorkedIn,
            LimedOn = limed,
            PlantingOn = limed.AddDays(days),
            Kinds = [],
        });
        Assert.Equal(tooSoon, outlook.Has("lime-too-young"));
    }

    [Fact]
    public void Kinds_that_stand_todays_pH_go_now_and_the_others_wait()
    {
        CropKind Kind(string id) => KindCatalog.Standard.Kinds.Single(k => k.Id == id);
        var unknown = Kind("cereal-rye") with { Ph = null };
        var outlook = Outlook(4, kinds: [Kind("alfalfa"), Kind("cereal-rye"), Kind("ladino-clover"), unknown]);
        Assert.Equal(["cereal-rye"], outlook.SowNow.Select(k => k.Id));
        Assert.Equal(["alfalfa", "ladino-clover"], outlook.HoldBack.Select(k => k.Id));
        Assert.Single(outlook.LimitUnknown);
        Assert.True(outlook.Has("lime-kind-hold-back"));
        Assert.True(outlook.Has("lime-kind-limit-unknown"));
        Assert.True(outlook.Has("lime-seed-legumes-later"));
        Assert.Equal(new DateOnly(2027, 4, 1), outlook.StartsOn);
        Assert.Equal(new DateOnly(2027, 7, 1), outlook.FullEffectOn);
    }

    [Theory]
    [InlineData(1.01, null, null, 2028)]
    [InlineData(1.0, null, null, 2030)]
    [InlineData(1.0, 6.9, null, 2028)]
    [InlineData(1.0, null, SoilTexture.SandyLoam, 2029)]
    public void The_next_test_comes_sooner_after_much_lime_and_on_sand(double tons, double? cec, SoilTexture? texture, int year) =>
        Assert.Equal(new DateOnly(year, 1, 1), Outlook(4, tons: tons, capacity: cec is { } c ? CationCharge.FromMilliequivalentsPer100Grams(c) : null, texture: texture).RetestOn);

    [Fact]
    public void Planting_before_liming_is_refused() => Assert.Throws<ArgumentException>(() => Outlook(-1));

    [Theory]
    [InlineData("urea", 3.57)]
    [InlineData("anhydrous-ammonia", 3.57)]
    [InlineData("ammonium-nitrate", 3.57)]
    [InlineData("ammonium-sulfate", 7.15)]
    [InlineData("dap", 5.36)]
    [InlineData("map", 7.15)]
    public void The_worst_case_is_stoichiometry(string fertilizer, double perNitrogen) =>
        // One hydrogen ion takes half a carbonate: 100.086 / 2 / 14.007 (closed form).
        Assert.Equal(perNitrogen, NitrogenAcidity.For(fertilizer, ApplicationRate.FromPoundsPerAcre(1), AcidityConvention.AllAcidStays).CarbonatePerNitrogen, 0.005);

    [Fact]
    public void Published_acidity_and_the_fall_of_pH()
    {
        // Cornell: 150 lb N as urea, 270 lb carbonate.
        Assert.Equal(270, NitrogenAcidity.For("urea", ApplicationRate.FromPoundsPerAcre(150), AcidityConvention.PlantsTakeUpNitrate).Carbonate.PoundsPerAcre, 1e-9);
        // Second implementation: 60 lb N x 3 years x 1.8 = 324 lb; / (500 x 2.0) = 0.32 pH.
        var three = NitrogenAcidity.For("urea", ApplicationRate.FromPoundsPerAcre(180), AcidityConvention.PlantsTakeUpNitrate);
        Assert.Equal(324, three.Carbonate.PoundsPerAcre, 1e-9);
        Assert.Equal(0.324, three.PhFall(LimeBufferCapacity.AtEquilibrium(500), Length.FromInches(20.0 / 3)), 1e-9);
        Assert.True(three.Has("lime-acidity-aglime"));
        // University of California table: calcium nitrate is basic, CAN-17 0.53.
        Assert.Equal(0, NitrogenAcidity.For("calcium-nitrate", ApplicationRate.FromPoundsPerAcre(50), AcidityConvention.PlantsTakeUpNitrate).Carbonate.PoundsPerAcre);
        Assert.Equal(53, NitrogenAcidity.For("can-17", ApplicationRate.FromPoundsPerAcre(100), AcidityConvention.PlantsTakeUpNitrate).Carbonate.PoundsPerAcre, 1e-9);
        Assert.Throws<ArgumentException>(() => NitrogenAcidity.For("can-17", ApplicationRate.FromPoundsPerAcre(100), AcidityConvention.AllAcidStays));
        Assert.Throws<KeyNotFoundException>(() => NitrogenAcidity.For("guano", ApplicationRate.Zero, AcidityConvention.AllAcidStays));
        Assert.Equal(-2, NitrogenAcidity.For("potassium-nitrate", ApplicationRate.Zero, AcidityConvention.PlantsTakeUpNitrate).CarbonatePerNitrogen);
    }

    [Fact]
    public void Fertilizers_by_the_hundredweight_match_the_older_tables()
    {
        // Older tables of acidity per 100 lb of product (common practice): ammonium nitrate 60, ammonium sulfate 110, urea 84.
        double Per100(string id, double nitrogenPercent) => NitrogenAcidity.For(id, ApplicationRate.FromPoundsPerAcre(nitrogenPercent), AcidityConvention.PlantsTakeUpNitrate).Carbonate.PoundsPerAcre;
        Assert.Equal(60, Per100("ammonium-nitrate", 33.5), 1.5);
        Assert.Equal(110, Per100("ammonium-sulfate", 21), 4.0);
        Assert.Equal(84, Per100("urea", 46), 1.5);
    }

    [Fact]
    public void Both_sulfur_tables_stand_apart()
    {
        // Royal Horticultural Society: 135 g/m2 on sand = 27.7 lb/1000 ft2; garden practice 10 lb for each pH unit.
        var sand = SulfurNeed.For(WaterPh.FromValue(7.5), 6.5, SoilTexture.Sand);
        Assert.Equal(27.7, sand.BySociety!.Value.PoundsPerThousandSquareFeet, 0.05);
        Assert.Equal(10, sand.ByGardenPractice!.Value.PoundsPerThousandSquareFeet, 1e-9);
        var clay = SulfurNeed.For(WaterPh.FromValue(7.0), 6.0, SoilTexture.Clay);
        Assert.Equal(55.3, clay.BySociety!.Value.PoundsPerThousandSquareFeet, 0.05);
        Assert.Equal(20, clay.ByGardenPractice!.Value.PoundsPerThousandSquareFeet, 1e-9);
        Assert.Null(SulfurNeed.For(WaterPh.FromValue(6.9), 6.0, SoilTexture.Clay).BySociety);
        Assert.Null(SulfurNeed.For(WaterPh.FromValue(7.5), 6.5, SoilTexture.Sand, hasFreeLime: true).ByGardenPractice);
        Assert.True(clay.Has("lime-lower-ph-doubtful"));
        Assert.Equal(3.12, SulfurNeed.CarbonatePerSulfur, 0.005);
        Assert.Throws<ArgumentOutOfRangeException>(() => SulfurNeed.For(WaterPh.FromValue(6.5), 6.5, SoilTexture.Sand));
    }
}
