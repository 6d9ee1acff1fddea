using PlotAgronomy.Soil;

namespace PlotAgronomy.Tests.Soil;

public class CationBalanceTests
{
    /// <summary>SMP 6.5 and Adams-Evans 7.75 on one soil: 11.5 against 7.5 meq, which moves a potassium level of 2.5 ppm a meq by 10 ppm.</summary>
    [Fact]
    public void Two_buffers_show_two_capacities_and_say_which_was_used()
    {
        var report = new SoilReport
        {
            Laboratory = "a laboratory",
            Readings = SoilSamples.Constructed,
            WaterPh = WaterPh.FromValue(5.6),
            BufferPhs = [BufferPh.FromValue(6.5, SoilBuffer.Smp), BufferPh.FromValue(7.75, SoilBuffer.AdamsEvans)],
        };
        var balances = CationBalance.ByEveryTerm(report);
        Assert.Equal(["clemson", "laboratory-midwest", "smp-sodium-counted", "tri-state-1995"], balances.Select(b => b.Term!.Id));
        double smp = balances[2].Capacity!.Value.Milliequivalents;
        double adamsEvans = balances[0].Capacity!.Value.Milliequivalents;
        Assert.Equal(10, 2.5 * (smp - adamsEvans), 0.05);
    }

    [Fact]
    public void A_term_from_memory_answers_by_name_only_and_with_a_finding()
    {
        var report = SoilSamples.Named("C19M");
        Assert.Empty(CationBalance.ByEveryTerm(report));
        Assert.Contains(CationBalance.For(report, AcidityTerm.Find("north-carolina")).Findings, f => f.Code == "data-from-memory");
    }

    [Fact]
    public void A_missing_buffer_gives_no_capacity_and_never_zero_acidity()
    {
        var balance = CationBalance.For(SoilSamples.Report(SoilSamples.Constructed, null), AcidityTerm.Clemson);
        Assert.Null(balance.Acidity);
        Assert.Null(balance.Capacity);
        Assert.Null(balance.BaseSaturation);
        Assert.All(balance.Bases, b => Assert.Null(b.Saturation));
        Assert.Contains(balance.Findings, f => f.Code == "soil-acidity-missing");
    }

    [Theory]
    [InlineData(6.49, false), InlineData(6.5, true), InlineData(6.51, true)]
    public void Without_acidity_the_capacity_is_the_bases_from_ph_six_and_a_half(double ph, bool answers)
    {
        var balance = CationBalance.WithoutAcidity(SoilSamples.Report(SoilSamples.Constructed, null, ph));
        Assert.Equal(answers, balance.Capacity is not null);
        Assert.Contains(balance.Findings, f => f.Code == (answers ? "soil-acidity-taken-as-zero" : "soil-acidity-missing"));
    }

    [Fact]
    public void Without_a_water_ph_acidity_is_not_taken_as_zero() =>
        Assert.Throws<ArgumentException>(() => CationBalance.WithoutAcidity(new SoilReport { Laboratory = "a laboratory" }));

    [Theory]
    [InlineData(6.4, true), InlineData(6.41, false)]
    public void The_commercial_term_stops_at_its_own_ph(double ph, bool answers)
    {
        var balance = CationBalance.For(SoilSamples.Report(SoilSamples.Constructed, BufferPh.FromValue(6.8, SoilBuffer.Smp), ph), AcidityTerm.Find("laboratory-midwest"));
        Assert.Equal(answers, balance.Capacity is not null);
        Assert.Equal(!answers, balance.Findings.Any(f => f.Code == "soil-acidity-outside-domain"));
    }

    [Theory]
    [InlineData(7.99, 0.08, false), InlineData(8.0, 0, true), InlineData(8.01, 0, true)]
    public void A_buffer_at_or_above_the_terms_end_gives_no_acidity_and_a_finding(double buffer, double acidity, bool found)
    {
        var balance = CationBalance.For(SoilSamples.Report(SoilSamples.Constructed, BufferPh.FromValue(buffer, SoilBuffer.AdamsEvans)), AcidityTerm.Clemson);
        Assert.Equal(acidity, balance.Acidity!.Value.Milliequivalents, 1e-9);
        Assert.Equal(found, balance.Findings.Any(f => f.Code == "soil-acidity-none-above-start"));
    }

    [Fact]
    public void A_printed_acidity_is_used_as_printed()
    {
        var report = new SoilReport { Laboratory = "a laboratory", Readings = SoilSamples.Constructed, ExchangeableAcidity = CationCharge.FromMilliequivalentsPer100Grams(2) };
        Assert.Equal(7.53, CationBalance.FromPrintedAcidity(report).Capacity!.Value.Milliequivalents, 0.005);
        Assert.Throws<ArgumentException>(() => CationBalance.FromPrintedAcidity(SoilSamples.Named("C18")));
    }

    [Fact]
    public void Charges_printed_in_meq_are_taken_as_they_are()
    {
        var report = SoilSamples.Report(SoilSamples.Cations(SoilTestUnit.MilliequivalentsPer100Grams, Extractant.NotStated, 0.3, 0.8, 4.4, 0.1), BufferPh.FromValue(7.75, SoilBuffer.AdamsEvans));
        Assert.Equal(5.6, CationBalance.For(report, AcidityTerm.Clemson).BaseSum.Milliequivalents, 1e-12);
    }

    [Fact]
    public void A_capacity_unlike_the_printed_one_is_a_finding()
    {
        SoilReport With(double printed) => new()
        {
            Laboratory = "a laboratory",
            Readings = SoilSamples.Constructed,
            WaterPh = WaterPh.FromValue(5.6),
            BufferPhs = [BufferPh.FromValue(7.75, SoilBuffer.AdamsEvans)],
            PrintedExchangeCapacity = CationCharge.FromMilliequivalentsPer100Grams(printed),
        };
        bool Differs(double printed) => CationBalance.For(With(printed), AcidityTerm.Clemson).Findings.Any(f => f.Code == "soil-capacity-differs");
        Assert.False(Differs(7.5));
        Assert.True(Differs(11.5));
    }

    [Fact]
    public void A_missing_base_is_said_so() =>
        Assert.Equal(2, CationBalance.For(SoilSamples.Report([SoilReading.FromPrinted(SoilAnalyte.Calcium, 880, SoilTestUnit.PartsPerMillion, Extractant.Mehlich3)],
            BufferPh.FromValue(7.75, SoilBuffer.AdamsEvans)), AcidityTerm.Clemson).Findings.Count(f => f.Code == "soil-cation-missing"));

    [Fact]
    public void Extremes_of_saturation_are_noticed()
    {
        var balance = CationBalance.For(SoilSamples.Named("P1"), AcidityTerm.Clemson);
        Assert.Contains(balance.Findings, f => f.Code == "soil-magnesium-low");
        Assert.Contains(balance.Findings, f => f.Code == "soil-potassium-over-magnesium");
        Assert.DoesNotContain(CationBalance.For(SoilSamples.Named("C19"), AcidityTerm.Clemson).Findings, f => f.Code is "soil-magnesium-low" or "soil-potassium-over-magnesium");
    }

    [Theory]
    [InlineData(7.2, false), InlineData(7.21, true)]
    public void Free_lime_is_a_note_on_the_capacity(double ph, bool found) =>
        Assert.Equal(found, CationBalance.WithoutAcidity(SoilSamples.Report(SoilSamples.Constructed, null, ph)).Findings.Any(f => f.Code == "soil-calcium-inflated"));

    [Fact]
    public void The_working_names_the_term_and_its_numbers()
    {
        var lines = CationBalance.For(SoilSamples.Named("P1"), AcidityTerm.Clemson).ShowWork();
        Assert.Contains("Acidity (Clemson (South Carolina) Adams-Evans) = meq per pH x max(0, start pH - buffer pH) = 8 x max(0, 8.00 - 7.70) = 2.4 meq/100 g [SOIL-SC1]", lines.Select(l => l.ToString()));
        Assert.Equal("Base saturation", lines[^1].Label);
    }

    [Theory]
    [InlineData(-1), InlineData(7)]
    public void Terms_are_rounded_to_between_no_and_six_decimals(int decimals) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => CationBalance.For(SoilSamples.Named("P1"), AcidityTerm.Clemson).WithTermsRounded(decimals));

    [Fact]
    public void An_unknown_term_names_those_there_are() =>
        Assert.Contains("clemson", Assert.Throws<KeyNotFoundException>(() => AcidityTerm.Find("ohio")).Message, StringComparison.Ordinal);

    [Fact]
    public void Terms_are_found_by_their_buffer()
    {
        Assert.Equal(["missouri"], AcidityTerm.For(SoilBuffer.NewWoodruff).Select(t => t.Id));
        Assert.Empty(AcidityTerm.For(SoilBuffer.Woodruff));
    }
}
