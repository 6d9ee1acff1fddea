using PlotAgronomy.Liming;
using PlotAgronomy.Soil;
using static PlotAgronomy.Tests.Liming.LimeSamples;

namespace PlotAgronomy.Tests.Liming;

public class LimeMethodTests
{
    private static LimeNeed Need(string method, SoilReport report, double target) => LimeMethod.Find(method).NeedFor(report, target);

    [Fact]
    public void Methods_from_memory_are_not_found_by_institution()
    {
        Assert.Equal(["oregon-2025-sikora"], Institution.Find("oregon").LimeMethods.Where(m => m.Buffers.Contains(SoilBuffer.Sikora)).Select(m => m.Id));
        Assert.Empty(Institution.Find("Wisconsin").LimeMethods);
        Assert.Empty(Institution.Find("Ohio/Indiana/Michigan 1995").LimeMethods);
        Assert.All(LimeMethod.Everything.SelectMany(m => m.Institution.LimeMethods), m => Assert.NotEqual(DataStatus.Memory, m.Status));
    }

    [Fact]
    public void A_method_from_memory_always_says_so()
    {
        foreach (var method in LimeMethod.Everything)
        {
            bool says = method.NeedFor(Report(5.0), method.ClosestTarget(6.5)).Has("data-from-memory");
            Assert.Equal(method.Status == DataStatus.Memory, says);
        }
    }

    [Fact]
    public void An_unknown_name_lists_the_names() =>
        Assert.Contains("oregon-2025-sikora", Assert.Throws<KeyNotFoundException>(() => LimeMethod.Find("nowhere")).Message, StringComparison.Ordinal);

    [Fact]
    public void Every_answer_carries_the_four_labels_of_its_method()
    {
        var need = Need("oregon-2025-sikora", Report(5.2, SoilBuffer.Sikora, 6.4), 6.4);
        Assert.Equal("oregon-score-100", need.Rate!.Basis.Id);
        Assert.Equal(6.4, need.Rate.TargetPh);
        Assert.Equal(6, need.Rate.Depth.Inches, 1e-12);
        Assert.Same(Institution.Find("Oregon"), need.Rate.Institution);
        Assert.Equal("2.1 ton/ac of 100-score lime to pH 6.4, 6 in deep (Oregon)", need.Rate.ToString());
    }

    [Fact]
    public void A_buffer_without_its_name_gives_no_number()
    {
        var sample = PlotSoil.For(Report(5.2) with { UnnamedBufferPh = 6.4 });
        var need = LimeMethod.Find("oregon-2025-sikora").NeedFor(sample, 6.4);
        Assert.Null(need.Rate);
        Assert.True(need.Has("lime-buffer-unnamed"));
    }

    [Fact]
    public void A_reading_of_another_buffer_is_not_taken()
    {
        var need = Need("tri-state-1995-smp", Report(5.2, SoilBuffer.Mehlich, 5.78), 6.5);
        Assert.Null(need.Rate);
        Assert.True(need.Has("lime-buffer-other"));
    }

    [Theory]
    [InlineData(6.4, false)]
    [InlineData(6.39, true)]
    [InlineData(6.5, false)]
    public void At_or_above_the_target_there_is_no_lime(double waterPh, bool limes)
    {
        var need = Need("oregon-2025-sikora", Report(waterPh, SoilBuffer.Sikora, 6.4), 6.4);
        Assert.Equal(limes, need.Rate!.OfBasis.PoundsPerAcre > 0);
        Assert.Equal(!limes, need.Has("lime-ph-at-target"));
    }

    [Theory]
    [InlineData("oregon-2025-sikora", SoilBuffer.Sikora, 4.79, 6.4, "lime-reading-outside")]
    [InlineData("oregon-2025-sikora", SoilBuffer.Sikora, 6.91, 6.4, "lime-reading-outside")]
    [InlineData("tri-state-1995-smp", SoilBuffer.Smp, 4.79, 6.5, "lime-reading-outside-practice")]
    [InlineData("wisconsin-a2809", SoilBuffer.Smp, 7.01, 6.3, "lime-reading-outside-practice")]
    [InlineData("kansas-mf2586", SoilBuffer.Smp, 4.79, 6.8, "lime-reading-outside-practice")]
    [InlineData("iowa-pm1688-equation", SoilBuffer.Smp, 5.79, 6.5, "lime-reading-outside-practice")]
    [InlineData("north-carolina-mehlich", SoilBuffer.Mehlich, 6.2, 6.6, "lime-target-too-high")]
    [InlineData("adams-evans", SoilBuffer.AdamsEvans, 7.6, 6.51, "lime-target-too-high")]
    [InlineData("adams-evans", SoilBuffer.AdamsEvans, 5.99, 6.0, "lime-reading-outside-practice")]
    [InlineData("iowa-pm1688-table", SoilBuffer.Smp, 5.79, 6.5, "lime-reading-outside")]
    [InlineData("oregon-em9057-smp", SoilBuffer.Smp, 6.6, 6.0, "lime-cell-blank")]
    [InlineData("oregon-2025-sikora", SoilBuffer.Sikora, 6.0, 6.5, "lime-target-not-offered")]
    public void Outside_a_method_there_is_a_finding_and_no_number(string method, SoilBuffer buffer, double reading, double target, string code)
    {
        var need = Need(method, Report(5.0, buffer, reading), target);
        Assert.Null(need.Rate);
        Assert.Null(need.Published);
        Assert.True(need.Has(code));
        Assert.Empty(need.ShowWork());
    }

    [Theory]
    [InlineData(4.8, 6.1)]
    [InlineData(6.9, 0.0)]
    public void The_limits_of_a_table_belong_to_it(double reading, double tons) =>
        Assert.Equal(tons, Need("oregon-2025-sikora", Report(5.0, SoilBuffer.Sikora, reading), 5.6).Rate!.OfBasis.ShortTonsPerAcre, 1e-9);

    [Fact]
    public void Organic_soil_is_refused_by_a_mineral_method_and_taken_by_its_own()
    {
        var muck = Report(4.8, SoilBuffer.Smp, 5.5, soilClass: SoilClass.Organic);
        Assert.True(Need("tri-state-1995-smp", muck, 6.5).Has("lime-soil-outside-method"));
        Assert.NotNull(Need("tri-state-1995-organic", muck, 5.3).Rate);
        var byMatter = new SoilReport { Laboratory = "test", WaterPh = WaterPh.FromValue(4.8), OrganicMatter = Fraction.FromPercent(20.1) };
        Assert.NotNull(Need("tri-state-1995-organic", byMatter, 5.3).Rate);
        Assert.True(Need("tri-state-1995-organic", new SoilReport { Laboratory = "test", WaterPh = WaterPh.FromValue(4.8), OrganicMatter = Fraction.FromPercent(20) }, 5.3).Has("lime-soil-outside-method"));
    }

    [Fact]
    public void Minnesotas_food_plot_table_keeps_its_blank_steps_and_its_limit()
    {
        Assert.Equal(0, Need("minnesota-food-plot-west", Report(5.5, SoilBuffer.Smp, 6.5), 6.0).Rate!.OfBasis.PoundsPerAcre);
        Assert.Equal(2000, Need("minnesota-food-plot-west", Report(5.5, SoilBuffer.Smp, 6.4), 6.0).Rate!.OfBasis.PoundsPerAcre);
        Assert.True(Need("minnesota-food-plot-west", Report(5.5, SoilBuffer.Smp, 6.4), 6.0).Has("lime-minnesota-area"));
    }

    [Fact]
    public void A_superseded_table_says_so()
    {
        Assert.True(LimeMethod.Find("oregon-em9057-smp").Origin.Sources[0].SupersededBy is not null);
        Assert.True(Need("oregon-em9057-smp", Report(5.0, SoilBuffer.Smp, 6.2), 6.0).Has("lime-method-superseded"));
    }

    [Theory]
    [InlineData(7.0, 1.0)]
    [InlineData(6.5, 0.9)]
    [InlineData(6.0, 0.7)]
    public void A_reading_off_by_a_tenth_moves_the_regional_rate_by_the_slope_of_its_table(double target, double tonsEitherSide)
    {
        // S-2.50 manual (WCC-103, 2003): readings repeat within about 0.1. Slopes of publication 221 worked apart.
        var need = Need("ncr-221-ag-ground", Report(4.8, SoilBuffer.Smp, 5.8), target);
        Assert.Equal(tonsEitherSide, (need.Highest!.OfBasis.ShortTonsPerAcre - need.Lowest!.OfBasis.ShortTonsPerAcre) / 2, 0.051);
        Assert.InRange(need.Rate!.OfBasis.PoundsPerAcre, need.Lowest.OfBasis.PoundsPerAcre, need.Highest.OfBasis.PoundsPerAcre);
    }

    [Fact]
    public void The_range_stays_open_where_it_leaves_the_method()
    {
        var need = Need("oregon-2025-sikora", Report(5.0, SoilBuffer.Sikora, 4.85), 6.4);
        Assert.Null(need.Highest);
        Assert.NotNull(need.Lowest);
        Assert.True(need.Has("lime-range-open"));
    }

    [Fact]
    public void Only_north_carolina_takes_earlier_lime_off()
    {
        var earlier = EarlierLime.FromRate(ApplicationRate.FromShortTonsPerAcre(1), 2);
        var need = LimeMethod.Find("oregon-2025-sikora").NeedFor(Report(5.2, SoilBuffer.Sikora, 6.4), 6.4, earlier);
        Assert.Equal(need.Gross!.OfBasis.PoundsPerAcre, need.Rate!.OfBasis.PoundsPerAcre);
        Assert.True(need.Has("lime-credit-not-printed"));
        Assert.Null(earlier.CreditBy(Institution.Find("Oregon"), SoilClass.Mineral));
    }

    [Theory]
    [InlineData(SoilClass.Mineral, 12.4, true)]
    [InlineData(SoilClass.Mineral, 12.5, false)]
    [InlineData(SoilClass.Organic, 6.2, true)]
    [InlineData(SoilClass.MineralOrganic, 6.25, false)]
    public void The_credit_ends_after_its_months(SoilClass soil, double months, bool some) =>
        Assert.Equal(some, EarlierLime.FromRate(ApplicationRate.FromShortTonsPerAcre(1), months).CreditBy(Institution.NorthCarolina, soil)!.Value.PoundsPerAcre > 1e-9);

    [Theory]
    [InlineData(3.99)]
    [InlineData(9.01)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    [InlineData(-1)]
    public void A_target_outside_its_range_is_refused(double target) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Need("oregon-2025-sikora", Report(5.0, SoilBuffer.Sikora, 6.0), target));

    [Theory]
    [InlineData(-0.01)]
    [InlineData(1.01)]
    [InlineData(double.NaN)]
    public void A_reading_error_outside_its_range_is_refused(double error) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => LimeMethod.Find("oregon-2025-sikora").NeedFor(Report(5.0, SoilBuffer.Sikora, 6.0), 6.4, null, error));

    [Theory]
    [InlineData(7.2, true)]
    [InlineData(6.8, false)]
    public void A_target_above_seven_is_questioned(double target, bool questioned) =>
        Assert.Equal(questioned, Need("oregon-2025-sikora", Report(5.0, SoilBuffer.Sikora, 6.0), target).Has("lime-over-target"));

    [Theory]
    [InlineData(6.99, true)]
    [InlineData(7, false)]
    public void A_low_exchange_capacity_is_named(double cec, bool weak) =>
        Assert.Equal(weak, Need("oregon-2025-sikora", Report(5.0, SoilBuffer.Sikora, 6.5, cec), 6.4).Has("lime-weakly-buffered"));

    [Fact]
    public void The_slip_in_the_cited_iowa_table_is_named() =>
        Assert.True(Need("iowa-pm1688-table", Report(5.0, SoilBuffer.Smp, 5.9), 6.9).Has("lime-table-slip"));

    [Fact]
    public void The_domain_of_adams_evans_ends_at_its_capacity_and_its_need()
    {
        Assert.True(Need("adams-evans", Report(5.6, SoilBuffer.AdamsEvans, 6.5), 6.5).Has("lime-cec-outside"));
        Assert.True(Need("adams-evans", Report(4.6, SoilBuffer.AdamsEvans, 6.6), 6.5).Has("lime-need-above-domain"));
    }

    [Theory]
    [InlineData(4.5, false)]
    [InlineData(4.51, true)]
    [InlineData(4.52, true)]
    public void Adams_evans_begins_where_the_soil_is_wholly_acid(double waterPh, bool answers)
    {
        // Closed form: 7.79 - 5.55 Hs + 2.27 Hs2 at Hs = 1 is pH 4.51; below it the acid share would pass 1.
        var need = Need("adams-evans", Report(waterPh, SoilBuffer.AdamsEvans, 7.8), 6.0);
        Assert.Equal(answers, need.Rate is not null);
        Assert.Equal(!answers, need.Has("lime-ph-below-domain"));
    }

    [Theory]
    [InlineData(3.99, 2000, false)]
    [InlineData(4.0, 3360, true)]
    [InlineData(4.01, 3368.4, false)]
    public void Pennsylvanias_rule_has_a_gap_that_is_named(double acidity, double pounds, bool named)
    {
        // Agronomy Guide (Penn State): 840 x acidity above 4.0, 2000 lb below it; exactly 4.0 is in neither.
        var need = Need("pennsylvania-field", Acid(6.0, acidity), 6.5);
        Assert.Equal(pounds, need.Rate!.OfBasis.PoundsPerAcre, 1e-6);
        Assert.Equal(named, need.Has("lime-rule-gap"));
    }

    [Fact]
    public void Pennsylvanias_least_rate_asks_for_the_pH()
    {
        Assert.True(Need("pennsylvania-field", Acid(null, 3.1), 6.5).Has("lime-ph-missing-required"));
        Assert.Null(Need("pennsylvania-field", Acid(null, 3.1), 6.5).Rate);
        Assert.NotNull(Need("pennsylvania-field", Acid(null, 6.2), 6.5).Rate);
    }

    [Fact]
    public void Ontarios_capped_cells_say_so()
    {
        Assert.True(Need("ontario-smp", Report(4.6, SoilBuffer.Smp, 5.0), 6.5).Has("lime-table-capped"));
        Assert.False(Need("ontario-smp", Report(5.2, SoilBuffer.Smp, 6.0), 6.5).Has("lime-table-capped"));
    }

    [Fact]
    public void A_texture_rate_is_interpolated_aloud_and_carries_a_range()
    {
        SoilReport Loam(double ph) => new() { Laboratory = "test laboratory", WaterPh = WaterPh.FromValue(ph), Texture = SoilTexture.Loam };
        Assert.False(Need("texture-fallback", Loam(5.0), 6.5).Has("lime-interpolated"));
        var between = Need("texture-fallback", Loam(5.25), 6.5);
        Assert.True(between.Has("lime-interpolated"));
        // Half way between 10.5 and 8 lb/100 ft2.
        Assert.Equal(92.5, between.Rate!.OfBasis.PoundsPerThousandSquareFeet, 1e-9);
        Assert.True(between.Lowest!.OfBasis < between.Rate.OfBasis && between.Highest!.OfBasis > between.Rate.OfBasis);
    }

    [Fact]
    public void Vermonts_middle_class_reaches_to_its_printed_end()
    {
        // University of Vermont: classes 6.2-6.7 and above 6.7; the target of 6.5 rules from 6.5 on.
        var vermont = LimeMethod.Find("vermont-aluminum").Formula;
        Assert.Equal(1000, vermont.PoundsPerAcre(20, PlotSoil.For(Report(6.7)), 6.5));
        Assert.Equal(0, vermont.PoundsPerAcre(20, PlotSoil.For(Report(6.8)), 6.5));
    }

    [Theory]
    [InlineData(SoilTexture.Sand, true)]
    [InlineData(SoilTexture.LoamySand, true)]
    [InlineData(SoilTexture.SandyLoam, false)]
    public void Sand_without_a_capacity_is_taken_for_weakly_buffered(SoilTexture texture, bool weak)
    {
        var report = new SoilReport { Laboratory = "test laboratory", WaterPh = WaterPh.FromValue(5.4), BufferPhs = [BufferPh.FromValue(6.6, SoilBuffer.Sikora)], Texture = texture };
        Assert.Equal(weak, Need("oregon-2025-sikora", report, 6.4).Has("lime-sand-weakly-buffered"));
        Assert.Equal(weak, WeaklyBufferedLime.AppliesTo(PlotSoil.For(report), 6.4));
    }

    private static SoilReport Acid(double? waterPh, double acidity) => new()
    {
        Laboratory = "test laboratory",
        WaterPh = waterPh is { } ph ? WaterPh.FromValue(ph) : null,
        ExchangeableAcidity = CationCharge.FromMilliequivalentsPer100Grams(acidity),
    };

    [Fact]
    public void Georgias_titration_ends_at_pH_six_and_a_half()
    {
        var sample = PlotSoil.For(Report(5.3) with { LimeBufferCapacity = LimeBufferCapacity.FromThirtyMinutes(150) });
        Assert.Equal(272.9, sample.Report.LimeBufferCapacity!.Value.MilligramsPerKilogramPerPh, 0.05);
        Assert.NotNull(LimeMethod.Find("georgia-lime-buffer-capacity").NeedFor(sample, 6.5).Rate);
        Assert.Null(LimeMethod.Find("georgia-lime-buffer-capacity").NeedFor(sample, 6.6).Rate);
    }

    [Fact]
    public void A_thirty_minute_reading_shows_how_it_reached_equilibrium()
    {
        // LIME-S36: 150 x (1.4742 + 0.0023 x 150) = 272.88.
        var thirty = LimeBufferCapacity.FromThirtyMinutes(150);
        var method = LimeMethod.Find("georgia-lime-buffer-capacity");
        var work = method.NeedFor(PlotSoil.For(Report(5.3) with { LimeBufferCapacity = thirty }), 6.5).ShowWork();
        Assert.Equal("150 x (1.4742 + 0.0023 x 150) = 272.9 mg/kg per pH", work[0].Numbers);
        var atEquilibrium = LimeBufferCapacity.AtEquilibrium(thirty.MilligramsPerKilogramPerPh);
        Assert.Equal(thirty, atEquilibrium);
        Assert.Equal(thirty.GetHashCode(), atEquilibrium.GetHashCode());
        Assert.DoesNotContain(method.NeedFor(PlotSoil.For(Report(5.3) with { LimeBufferCapacity = atEquilibrium }), 6.5).ShowWork(), l => l.Label == work[0].Label);
    }

    [Fact]
    public void Shown_work_ends_with_the_labels_and_the_range()
    {
        var work = LimeMethod.Find("north-carolina-mehlich").NeedFor(Report(5.2, SoilBuffer.Mehlich, 6.075), 6.0, EarlierLime.FromRate(ApplicationRate.FromShortTonsPerAcre(1), 5)).ShowWork();
        Assert.Equal(["Acidity Ac", "Base rate", "Earlier lime still to work", "Need", "Labels", "Range"], work.Select(l => l.Label));
        Assert.Equal("2.1 x (6 - 5.2) / (6.6 - 5.2) = 1.2 ton/ac", work[1].Numbers);
    }

    [Theory]
    [InlineData("tri-state-1995-smp", SoilBuffer.Smp, 6.95, 6.5, "lime-reading-above-table")]
    [InlineData("tri-state-1995-smp", SoilBuffer.Smp, 6.4, 6.5, "lime-tri-state-1995")]
    [InlineData("iowa-pm1688-equation", SoilBuffer.Smp, 6.95, 6.5, "lime-negative-means-none")]
    [InlineData("iowa-pm1688-table", SoilBuffer.Sikora, 6.4, 6.5, "lime-iowa-sikora")]
    public void What_a_method_does_is_said(string method, SoilBuffer buffer, double reading, double target, string code)
    {
        var need = Need(method, Report(5.0, buffer, reading), target);
        Assert.NotNull(need.Rate);
        Assert.True(need.Has(code));
    }

    [Fact]
    public void Missouris_full_neutralization_follows_from_the_definitions_and_says_what_it_is()
    {
        // 50 mg carbonate a meq; 1 meq/100 g over 2 million lb is 1,000 lb; 800 lb of ENM to the ton of carbonate: 400 lb of ENM.
        var need = Need("missouri-woodruff", Acid(5.5, 1), 7.0);
        Assert.Equal(400, need.Rate!.OfBasis.PoundsPerAcre, 1e-9);
        Assert.True(need.Has("lime-full-neutralization"));
        Assert.True(need.Has("data-from-memory"));
    }

    [Fact]
    public void A_texture_rate_is_called_rough() =>
        Assert.True(Need("texture-fallback", new SoilReport { Laboratory = "test laboratory", WaterPh = WaterPh.FromValue(5.0), Texture = SoilTexture.ClayLoam }, 6.5).Has("lime-texture-rough"));

    [Fact]
    public void A_depth_the_source_does_not_print_is_named()
    {
        Assert.True(Need("north-carolina-mehlich", Report(5.0, SoilBuffer.Mehlich, 6.2), 6.0).Has("lime-depth-assumed"));
        Assert.False(Need("oregon-2025-sikora", Report(5.0, SoilBuffer.Sikora, 6.2), 6.0).Has("lime-depth-assumed"));
    }

    [Fact]
    public void Equations_that_cross_are_named()
    {
        Assert.True(Need("wisconsin-a2809", Report(4.5, SoilBuffer.Smp, 6.9), 6.8).Has("lime-lower-target-needs-more"));
        Assert.False(Need("wisconsin-a2809", Report(5.2, SoilBuffer.Smp, 6.2), 6.8).Has("lime-lower-target-needs-more"));
    }

    [Theory]
    [InlineData(6.31, false)]
    [InlineData(6.3, true)]
    [InlineData(6.29, true)]
    public void The_tri_state_limes_only_from_its_margin_on(double waterPh, bool limes)
    {
        // Tri-state E-2567 (1995): lime when the soil is 0.2 to 0.3 below the recommended pH.
        var need = Need("tri-state-1995-smp", Report(waterPh, SoilBuffer.Smp, 6.6), 6.5);
        Assert.Equal(limes, need.Rate!.OfBasis.PoundsPerAcre > 0);
        Assert.Equal(!limes, need.Has("lime-within-margin"));
    }

    [Fact]
    public void A_small_need_in_north_carolina_is_optional()
    {
        var small = Need("north-carolina-mehlich", Report(5.8, SoilBuffer.Mehlich, 6.45), 6.0);
        Assert.Equal(0, small.Published!.OfBasis.PoundsPerAcre);
        Assert.True(small.Has("lime-small-need"));
        Assert.False(Need("north-carolina-mehlich", Report(5.2, SoilBuffer.Mehlich, 6.075), 6.0).Has("lime-small-need"));
    }
}
