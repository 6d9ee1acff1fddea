using System.Collections.Immutable;
using PlotAgronomy.Soil;
using UnitsNet;

namespace PlotAgronomy.Tests.Soil;

public class SoilPlausibilityTests
{
    private static readonly DateOnly Today = new(2026, 11, 1);

    private static SoilReport Report(string laboratory = "North Carolina", ImmutableArray<SoilReading>? readings = null, double? waterPh = 6.6, double? saltPh = null,
        ImmutableArray<BufferPh>? buffers = null, double? depthInches = 6, DateOnly? sampled = null, double? capacity = null, double? saturationPercent = null) => new()
        {
            Laboratory = laboratory,
            Readings = readings ?? [],
            WaterPh = waterPh is { } ph ? WaterPh.FromValue(ph) : null,
            SaltPh = saltPh is { } salt ? SaltPh.FromValue(salt) : null,
            BufferPhs = buffers ?? [],
            SampledDepth = depthInches is { } inches ? Length.FromInches(inches) : null,
            SampledOn = sampled ?? new DateOnly(2026, 3, 1),
            PrintedExchangeCapacity = capacity is { } meq ? CationCharge.FromMilliequivalentsPer100Grams(meq) : null,
            PrintedBaseSaturation = saturationPercent is { } percent ? Fraction.FromPercent(percent) : null,
        };

    private static IEnumerable<string> Codes(SoilReport report, SoilReport? earlier = null) => report.Check(Today, earlier).Select(f => f.Code);

    private static SoilReading Reading(SoilAnalyte analyte, double value, SoilTestUnit unit, Extractant extractant = Extractant.Mehlich3, PrintedForm form = PrintedForm.Element) =>
        SoilReading.FromPrinted(analyte, value, unit, extractant, form);

    [Fact]
    public void A_sound_report_has_no_findings() =>
        Assert.Empty(Codes(Report(readings: [Reading(SoilAnalyte.Phosphorus, 45, SoilTestUnit.NorthCarolinaIndex), Reading(SoilAnalyte.Potassium, 30, SoilTestUnit.NorthCarolinaIndex)])));

    [Theory]
    [InlineData(65, "soil-ph-decimal-point"), InlineData(35, "soil-ph-decimal-point"), InlineData(90, "soil-ph-decimal-point")]
    [InlineData(34, "soil-ph-impossible"), InlineData(91, "soil-ph-impossible"), InlineData(0, "soil-ph-impossible"), InlineData(-6.5, "soil-ph-impossible")]
    public void A_number_that_is_no_ph_says_what_was_likely_meant(double typed, string code) =>
        Assert.Equal(code, Assert.Single(SoilReport.CheckTypedPh(typed)).Code);

    [Theory]
    [InlineData(6.5), InlineData(14)]
    public void A_number_that_can_be_a_ph_passes(double typed) => Assert.Empty(SoilReport.CheckTypedPh(typed));

    [Theory]
    [InlineData(double.NaN), InlineData(double.PositiveInfinity)]
    public void A_typed_ph_is_a_number(double typed) => Assert.Throws<ArgumentOutOfRangeException>(() => SoilReport.CheckTypedPh(typed));

    [Theory]
    [InlineData(3.49, true), InlineData(3.5, false), InlineData(8.5, false), InlineData(8.51, true), InlineData(8.9, true)]
    public void A_ph_no_soil_shows_is_a_finding(double ph, bool found) => Assert.Equal(found, Codes(Report(waterPh: ph, buffers: [BufferPh.FromValue(6.4, SoilBuffer.Mehlich)])).Contains("soil-ph-unlikely"));

    [Fact]
    public void A_salt_ph_above_the_water_ph_is_a_finding()
    {
        Assert.Contains("soil-salt-ph-above-water", Codes(Report(waterPh: 6.6, saltPh: 6.7)));
        Assert.Matches("6[.]7.*6[.]6", Report(waterPh: 6.6, saltPh: 6.7).Check(Today).Single(f => f.Code == "soil-salt-ph-above-water").Text);
        Assert.DoesNotContain("soil-salt-ph-above-water", Codes(Report(waterPh: 6.6, saltPh: 6.1)));
    }

    [Theory]
    [InlineData(SoilBuffer.Mehlich, 6.6), InlineData(SoilBuffer.ModifiedMehlich, 6.6), InlineData(SoilBuffer.Smp, 7.5), InlineData(SoilBuffer.Sikora, 7.5), InlineData(SoilBuffer.Sikora2, 7.5), InlineData(SoilBuffer.AdamsEvans, 8.0)]
    public void A_buffer_ph_above_the_buffers_own_start_is_a_finding(SoilBuffer buffer, double start)
    {
        Assert.DoesNotContain("soil-buffer-above-start", Codes(Report(buffers: [BufferPh.FromValue(start - 0.01, buffer)])));
        Assert.DoesNotContain("soil-buffer-above-start", Codes(Report(buffers: [BufferPh.FromValue(start, buffer)])));
        Assert.Contains("soil-buffer-above-start", Codes(Report(buffers: [BufferPh.FromValue(start + 0.01, buffer)])));
    }

    /// <summary>Common practice (C15): 7.2 by SMP is a placeholder, a blank below the target asks for a reading.</summary>
    [Fact]
    public void C15_a_blank_or_a_placeholder_buffer_is_never_taken_for_a_reading()
    {
        Assert.Contains("soil-buffer-placeholder", Codes(Report(waterPh: 6.9, buffers: [BufferPh.FromValue(7.2, SoilBuffer.Smp)])));
        Assert.DoesNotContain("soil-buffer-missing", Codes(Report(waterPh: 6.9)));
        Assert.Contains("soil-buffer-missing", Codes(Report(waterPh: 6.49)));
        Assert.DoesNotContain("soil-buffer-missing", Codes(Report(waterPh: 6.5)));
        Assert.Null(Report(waterPh: 6.9).FindBuffer(SoilBuffer.Smp));
        Assert.Throws<ArgumentOutOfRangeException>(() => BufferPh.FromValue(0, SoilBuffer.Smp));
    }

    [Fact]
    public void A_water_ph_in_the_buffers_place_is_noticed() =>
        Assert.Contains("soil-ph-buffer-swapped", Codes(Report(waterPh: 6.4, buffers: [BufferPh.FromValue(5.1, SoilBuffer.Smp)])));

    [Theory]
    [InlineData(2023, 10, 31, true), InlineData(2023, 11, 1, false), InlineData(2023, 11, 2, false)]
    public void A_sample_older_than_three_years_is_a_finding(int year, int month, int day, bool found) =>
        Assert.Equal(found, Codes(Report(sampled: new DateOnly(year, month, day))).Contains("soil-report-old"));

    [Fact]
    public void A_sample_of_tomorrow_is_a_finding()
    {
        Assert.Contains("soil-report-from-future", Codes(Report(sampled: Today.AddDays(1))));
        Assert.DoesNotContain("soil-report-from-future", Codes(Report(sampled: Today)));
        Assert.Contains("soil-report-undated", Codes(new SoilReport { Laboratory = "North Carolina" }));
    }

    [Theory]
    [InlineData(3, "soil-sample-shallow"), InlineData(4.99, "soil-sample-shallow"), InlineData(9.01, "soil-sample-deep")]
    public void A_shallow_or_deep_sample_is_a_finding(double inches, string code) => Assert.Contains(code, Codes(Report(depthInches: inches)));

    [Theory]
    [InlineData(4.99, true), InlineData(5, false), InlineData(7, false), InlineData(7.01, true)]
    public void A_depth_other_than_the_programs_is_a_finding(double inches, bool found) =>
        Assert.Equal(found, Codes(Report("Oklahoma State laboratory", depthInches: inches)).Contains("soil-depth-differs"));

    [Fact]
    public void A_depth_other_than_the_methods_is_a_finding()
    {
        Assert.Equal("soil-depth-differs", Assert.Single(Report(depthInches: 4).CheckDepth(Length.FromInches(8), "the lime table")).Code);
        Assert.Empty(Report(depthInches: 8).CheckDepth(Length.FromInches(8), "the lime table"));
        Assert.Empty(Report(depthInches: null).CheckDepth(Length.FromInches(8), "the lime table"));
        Assert.Throws<ArgumentOutOfRangeException>(() => Report().CheckDepth(Length.FromInches(0), "the lime table"));
        Assert.Throws<ArgumentException>(() => Report().CheckDepth(Length.FromInches(8), " "));
    }

    /// <summary>Common practice (C17, C19): the unit of the report must be the unit of its program.</summary>
    [Fact]
    public void A_unit_the_program_does_not_print_is_a_finding()
    {
        Assert.Contains("soil-unit-not-programs", Codes(Report("Missouri", [Reading(SoilAnalyte.Phosphorus, 30, SoilTestUnit.PartsPerMillion, Extractant.BrayP1)])));
        Assert.Contains("soil-unit-not-programs", Codes(Report("North Carolina", [Reading(SoilAnalyte.Phosphorus, 45, SoilTestUnit.PoundsPerAcre)])));
        Assert.DoesNotContain("soil-unit-not-programs", Codes(Report("Missouri", [Reading(SoilAnalyte.Phosphorus, 30, SoilTestUnit.PoundsPerAcre, Extractant.BrayP1)])));
    }

    [Fact]
    public void An_extractant_the_program_does_not_use_is_a_finding()
    {
        Assert.Contains("soil-extractant-not-programs", Codes(Report("Missouri", [Reading(SoilAnalyte.Phosphorus, 30, SoilTestUnit.PoundsPerAcre)])));
        Assert.DoesNotContain("soil-extractant-not-programs", Codes(Report("Pennsylvania", [Reading(SoilAnalyte.Phosphorus, 30, SoilTestUnit.PartsPerMillion, Extractant.Mehlich3Icp)])));
        Assert.Contains("soil-extractant-missing", Codes(Report(readings: [Reading(SoilAnalyte.Phosphorus, 45, SoilTestUnit.NorthCarolinaIndex, Extractant.NotStated)])));
    }

    [Fact]
    public void An_unknown_laboratory_is_asked_for_its_unit()
    {
        Assert.Contains("soil-unit-ask", Codes(Report("a private laboratory", [Reading(SoilAnalyte.Phosphorus, 30, SoilTestUnit.PartsPerMillion)])));
        Assert.DoesNotContain("soil-unit-ask", Codes(Report("a private laboratory", [Reading(SoilAnalyte.Zinc, 1, SoilTestUnit.PartsPerMillion)])));
    }

    [Theory]
    [InlineData(SoilTestUnit.PartsPerMillion, 400, false), InlineData(SoilTestUnit.PartsPerMillion, 400.1, true)]
    [InlineData(SoilTestUnit.PoundsPerAcre, 800, false), InlineData(SoilTestUnit.PoundsPerAcre, 800.1, true)]
    public void A_figure_far_above_what_soils_show_is_a_finding(SoilTestUnit unit, double value, bool found) =>
        Assert.Equal(found, Codes(Report("New Jersey", [Reading(SoilAnalyte.Phosphorus, value, unit)])).Contains("soil-value-high-for-unit"));

    [Fact]
    public void Oxide_on_a_report_is_a_finding() =>
        Assert.Contains("soil-oxide-not-programs", Codes(Report("Pennsylvania", [Reading(SoilAnalyte.Phosphorus, 60, SoilTestUnit.PartsPerMillion, form: PrintedForm.Oxide)])));

    [Theory]
    [InlineData(30, 68.7, "soil-oxide-typed-as-element"), InlineData(30, 60, "soil-doubled-since"), InlineData(60, 30, "soil-doubled-since")]
    public void A_sudden_ratio_to_the_earlier_report_shows_the_slip(double before, double now, string code)
    {
        SoilReport With(double p) => Report("Pennsylvania", [Reading(SoilAnalyte.Phosphorus, p, SoilTestUnit.PartsPerMillion)]);
        Assert.Contains(code, Codes(With(now), With(before)));
        Assert.DoesNotContain(Codes(With(before * 1.2), With(before)), c => c is "soil-doubled-since" or "soil-oxide-typed-as-element");
    }

    [Fact]
    public void Bases_above_the_printed_capacity_show_pounds_typed_as_ppm()
    {
        var asPrinted = SoilSamples.Cations(SoilTestUnit.PoundsPerAcre, Extractant.Mehlich3, 220, 190, 1760, 0);
        var mistyped = SoilSamples.Cations(SoilTestUnit.PartsPerMillion, Extractant.Mehlich3, 220, 190, 1760, 0);
        Assert.DoesNotContain("soil-cations-exceed-capacity", Codes(Report("Kentucky", asPrinted, capacity: 7.5)));
        Assert.Contains("soil-cations-exceed-capacity", Codes(Report("Kentucky", mistyped, capacity: 7.5)));
    }

    [Fact]
    public void Saturations_that_do_not_add_up_are_findings()
    {
        ImmutableArray<SoilReading> Saturations(double potassium, double magnesium, double calcium) =>
        [
            Reading(SoilAnalyte.Potassium, potassium, SoilTestUnit.PercentSaturation),
            Reading(SoilAnalyte.Magnesium, magnesium, SoilTestUnit.PercentSaturation),
            Reading(SoilAnalyte.Calcium, calcium, SoilTestUnit.PercentSaturation),
        ];
        Assert.Contains("soil-saturation-sum", Codes(Report(readings: Saturations(5, 18, 79.1))));
        Assert.DoesNotContain("soil-saturation-sum", Codes(Report(readings: Saturations(5, 18, 79))));
        Assert.Contains("soil-saturation-differs", Codes(Report(readings: Saturations(4, 14, 60), saturationPercent: 75.9)));
        Assert.DoesNotContain("soil-saturation-differs", Codes(Report(readings: Saturations(4, 14, 60), saturationPercent: 76)));
    }

    [Fact]
    public void Findings_come_most_serious_first()
    {
        var severities = Report("a private laboratory", [Reading(SoilAnalyte.Phosphorus, 900, SoilTestUnit.PartsPerMillion)], waterPh: 5.0).Check(Today).Select(f => f.Severity).ToList();
        Assert.Equal(severities.OrderDescending(), severities);
        Assert.True(severities.Count >= 3);
    }
}
