using PlotAgronomy.Liming;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Tests.Liming;

/// <summary>Kernels on and beside the limits they are given, with coefficients so round that the sums are exact.</summary>
public class LimeKernelLimitTests
{
    /// <summary>pH = 8 - 4 Hs + Hs squared is 6.25 at half acid; acidity is 8 x (8 - buffer pH).</summary>
    private const double HalfAcidPh = 6.25;

    private static readonly Origin Nowhere = CsvTable.Embedded("Liming/Data/vermont.csv").Rows[0].Origin();

    private static AdamsEvansLimeKernel Kernel(double tonsPerMeq, double highestCapacity = 13, double highestNeed = 5) => new()
    {
        AcidityPerPh = 8,
        StartPh = 8,
        PhConstant = 8,
        PhLinear = 4,
        PhSquare = 1,
        TonsPerMeq = tonsPerMeq,
        AcidShareAtTarget = 0.25,
        HighestCapacity = highestCapacity,
        HighestNeed = highestNeed,
    };

    [Theory]
    [InlineData(7.1875, false)] // (8 - 7.1875) x 8 / 0.5 = 13 meq
    [InlineData(7.0, false)]
    [InlineData(7.25, true)] // 12 meq
    public void Adams_evans_stops_at_the_capacity_it_is_given_even_where_the_need_is_small(double bufferPh, bool answers)
    {
        double pounds = Kernel(tonsPerMeq: 1).PoundsPerAcre(bufferPh, HalfAcidPh, out var remarks);
        Assert.Equal(answers, !double.IsNaN(pounds));
        Assert.Equal(answers ? LimeRemarks.None : LimeRemarks.CapacityOutside, remarks);
    }

    [Theory]
    [InlineData(7.375, double.NaN)] // 10 meq x 2 x (0.5 - 0.25) = 5 ton
    [InlineData(7.3125, double.NaN)]
    [InlineData(7.4375, 9000)] // 9 meq x 2 x 0.25 = 4.5 ton
    public void Adams_evans_stops_at_the_need_it_is_given_even_where_the_capacity_is_small(double bufferPh, double expected)
    {
        double pounds = Kernel(tonsPerMeq: 2).PoundsPerAcre(bufferPh, HalfAcidPh, out var remarks);
        Assert.Equal(expected, pounds);
        Assert.Equal(double.IsNaN(expected) ? LimeRemarks.NeedOutside : LimeRemarks.None, remarks);
    }

    [Fact]
    public void Where_capacity_and_need_are_both_too_large_the_capacity_is_named()
    {
        Assert.True(double.IsNaN(Kernel(tonsPerMeq: 2).PoundsPerAcre(7, HalfAcidPh, out var remarks)));
        Assert.Equal(LimeRemarks.CapacityOutside, remarks);
    }

    [Theory]
    [InlineData(3.9, 2000, 4000)]
    [InlineData(6, 5040, 6000)]
    public void Pennsylvanias_least_rate_is_for_the_field_target_alone(double acidity, double toField, double toHigh)
    {
        // LIME-S8: 840 lb a meq to 6.5 and at least 2000 lb below 4.0 meq; 1000 lb a meq to 7.0, whatever the acidity.
        var field = new PennsylvaniaLimeKernel { IsHighTarget = false, PerMeq = 840, Limit = 4, Least = 2000 };
        var high = new PennsylvaniaLimeKernel { IsHighTarget = true, PerMeq = 1000, Limit = 4, Least = 5000 };
        Assert.Equal(toField, field.PoundsPerAcre(acidity, double.NaN, out _), 1e-9);
        Assert.Equal(Math.Min(toHigh, 1000 * acidity), high.PoundsPerAcre(acidity, double.NaN, out _), 1e-9);
    }

    [Theory]
    [InlineData(5.59, 50, false)]
    [InlineData(5.6, 50, true)]
    [InlineData(6.19, 50, true)]
    [InlineData(6.2, 50, false)]
    [InlineData(6, 40, false)]
    [InlineData(6, 40.1, true)]
    [InlineData(6, 70, true)]
    [InlineData(6, 70.1, false)]
    public void A_step_of_vermonts_table_holds_its_lower_pH_and_its_upper_aluminum(double ph, double aluminum, bool holds) =>
        Assert.Equal(holds, new VermontStep(5.6, 6.2, 40, 70, 4000, Nowhere).Holds(ph, aluminum));

    [Fact]
    public void The_lowest_step_of_vermonts_table_holds_a_soil_without_aluminum() =>
        Assert.True(new VermontStep(5.6, 6.2, 0, 40, 3000, Nowhere).Holds(6, 0));

    [Fact]
    public void A_gap_in_vermonts_table_is_an_error_and_not_a_rate()
    {
        var kernel = new VermontLimeKernel([new(5.6, 6.2, 40, 70, 4000, Nowhere)]);
        Assert.Equal(4000, kernel.PoundsPerAcre(50, 6, out _));
        Assert.Throws<InvalidOperationException>(() => kernel.PoundsPerAcre(50, 6.2, out _));
    }
}
