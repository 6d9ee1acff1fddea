using PlotAgronomy.Liming;
using PlotAgronomy.Soil;
using static PlotAgronomy.Tests.Liming.LimeSamples;

namespace PlotAgronomy.Tests.Liming;

/// <summary>The sum that each method lays out, line by line; the numbers are worked by hand from the formulas as
/// printed.</summary>
public class LimeWorkingTests
{
    private static List<(string Label, string Numbers)> Work(string method, SoilReport report, double target)
    {
        var work = LimeMethod.Find(method).NeedFor(report, target).ShowWork();
        return [.. work.TakeWhile(line => line.Label != "Labels").Select(line => (line.Label, line.Numbers))];
    }

    private static SoilReport Acid(double? waterPh, double acidity) =>
        Report(waterPh) with { ExchangeableAcidity = CationCharge.FromMilliequivalentsPer100Grams(acidity) };

    [Fact]
    public void Adams_evans_goes_from_acidity_to_share_to_capacity_to_rate()
    {
        // LIME-AE1: pH 5.58 is 7.79 - 5.55 Hs + 2.27 Hs2 at Hs = 0.501; pH 6.5 at Hs = 0.26; H = 8 x 0.5 = 4; 4 / 0.501 = 7.984.
        var work = Work("adams-evans", Report(5.58, SoilBuffer.AdamsEvans, 7.5), 6.5);
        Assert.Equal(["Acidity H", "Acid share now", "CEC", "Acid share at the target", "Base rate"], work.Select(l => l.Label));
        Assert.Equal("8 x (8 - 7.5) = 4 meq/100 g", work[0].Numbers);
        Assert.EndsWith(" = 0.5008", work[1].Numbers, StringComparison.Ordinal);
        Assert.Equal("4 / 0.5008 = 7.988 meq/100 g", work[2].Numbers);
        Assert.EndsWith(" = 0.2601", work[3].Numbers, StringComparison.Ordinal);
        Assert.Equal("0.75 x 7.988 x (0.5008 - 0.2601) = 1.442 ton/ac", work[4].Numbers);
    }

    [Fact]
    public void Georgia_goes_from_the_soil_of_its_depth_to_the_rate()
    {
        // LIME-S36: 200 mg/kg for a unit of pH, 1.2 units, over 0.3 x 6.67 = 2 million lb: 200 x 1.2 x 2 = 480 lb.
        var work = Work(
            "georgia-lime-buffer-capacity",
            Report(5.3) with { LimeBufferCapacity = LimeBufferCapacity.AtEquilibrium(200) },
            6.5
        );
        Assert.Equal(
            [("Soil in million lb", "0.3 x 6.67 = 2 million lb/ac"), ("Base rate", "200 x (6.5 - 5.3) x 2 = 480 lb/ac")],
            work
        );
    }

    [Fact]
    public void Missouri_goes_from_the_carbonate_of_a_meq_to_the_rate() =>
        // LIME-S17 and the definition of ENM: 50 x 10 x 2 million lb x 800 / 2,000 = 400 lb of ENM; 3 meq take three times that.
        Assert.Equal(
            [
                ("ENM for each meq", "50 x 10 x 0.3 x 6.67 x 800 / 2,000 = 400 lb ENM/ac"),
                ("Base rate", "400 x 3 = 1,200 lb ENM/ac"),
            ],
            Work("missouri-woodruff", Acid(5.5, 3), 7.0)
        );

    [Theory]
    [InlineData(6.5, 6, "840 x 6 = 5,040 lb/ac")]
    [InlineData(6.5, 4, "840 x 4 = 3,360 lb/ac")]
    [InlineData(7.0, 6, "1,000 x 6 = 6,000 lb/ac")]
    [InlineData(7.0, 3, "1,000 x 3 = 3,000 lb/ac")]
    public void Pennsylvania_multiplies_the_acidity_by_the_figure_of_its_target(double target, double acidity, string numbers) =>
        Assert.Equal([("Base rate", numbers)], Work("pennsylvania-field", Acid(6.0, acidity), target));

    [Fact]
    public void Pennsylvanias_least_rate_is_shown_as_a_choice()
    {
        var line = Assert.Single(Work("pennsylvania-field", Acid(6.0, 3), 6.5));
        Assert.EndsWith(" = 2,000 lb/ac", line.Numbers, StringComparison.Ordinal);
        Assert.Contains("3 < 4", line.Numbers, StringComparison.Ordinal);
    }

    [Fact]
    public void The_tri_state_equation_is_shown_with_the_lime_test_index() =>
        // Tri-state E-2567 to 6.5: 60.4 - 0.87 x 65 = 3.85 ton.
        Assert.Equal(
            [("Base rate", "60.4 - 0.87 x 65 = 3.85 ton/ac")],
            Work("tri-state-1995-smp", Report(5.5, SoilBuffer.Smp, 6.5), 6.5)
        );

    [Fact]
    public void Where_the_tri_state_table_ends_the_rate_runs_out_in_a_straight_line() =>
        // At index 68, the last row, 60.4 - 0.87 x 68 = 1.24 ton; none at 69; half way, half of it.
        Assert.Equal(
            [("Base rate", "1.24 + (0 - 1.24) x (6.85 - 6.8) / (6.9 - 6.8) = 0.62 ton/ac")],
            Work("tri-state-1995-smp", Report(5.5, SoilBuffer.Smp, 6.85), 6.5)
        );

    [Fact]
    public void A_printed_row_is_shown_as_the_row_it_is()
    {
        // LIME-S10: 6.1 ton at 4.8, the first row, to pH 5.6; LIME-S45: 2 ton at pH 5.6 to 6.1 and 40 to 70 ppm.
        Assert.Equal(
            "row 4.8, to pH 5.6: 6.1 ton/ac",
            Assert.Single(Work("oregon-2025-sikora", Report(5.0, SoilBuffer.Sikora, 4.8), 5.6)).Numbers
        );
        var aluminum = SoilReading.FromPrinted(SoilAnalyte.Aluminum, 50, SoilTestUnit.PartsPerMillion, Extractant.ModifiedMorgan);
        var vermont = Report(6.0) with { Readings = [aluminum] };
        Assert.Equal([("Base rate", "pH 6, aluminum 50 ppm: 2 ton/ac")], Work("vermont-aluminum", vermont, 6.5));
        // The garden table's first row on loam: 16 lb/100 ft2 are 16 x 435.6 / 2000 = 3.48 ton/ac.
        Assert.Equal(
            [("Base rate", "pH 4: 3.48 ton/ac")],
            Work("texture-fallback", Report(4.0) with { Texture = SoilTexture.Loam }, 6.5)
        );
    }
}
