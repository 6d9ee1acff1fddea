using PlotAgronomy.Nutrients;

namespace PlotAgronomy.Tests.Nutrients;

/// <summary>What a kernel notices on and beside a limit, with coefficients so round that the sums are exact.</summary>
public class NeedKernelRemarkTests
{
    /// <summary>(I - 2) squared touches zero at 2 and turns up at once.</summary>
    private static readonly CurveNeedKernel Touching =
        new()
        {
            A = 1,
            B = 4,
            C = 4,
            FirstZero = SystemMath.FirstZero(1, 4, 4),
            ZeroAboveIndex = double.PositiveInfinity,
            Range = 1,
        };

    [Theory]
    [InlineData(1, 1, false)]
    [InlineData(2, 0, false)]
    [InlineData(3, 0, true)]
    public void A_curve_that_turns_up_again_is_named_only_where_it_gives_pounds_again(double index, double rate, bool isNamed)
    {
        Assert.Equal(rate, Touching.Rate(index, double.NaN));
        Assert.Equal(isNamed ? NeedRemarks.CurveTurnsUp : NeedRemarks.None, Touching.Remarks(index, double.NaN, rate));
    }

    [Theory]
    [InlineData(1, 4, 4, 2)] // (I - 2) squared
    [InlineData(1, 3, 2, 1)] // (I - 1)(I - 2)
    [InlineData(1, 2, 2, double.PositiveInfinity)] // (I - 1) squared + 1
    public void The_first_zero_of_a_parabola_is_the_smaller_root(double a, double b, double c, double root) =>
        Assert.Equal(root, SystemMath.FirstZero(a, b, c));

    private static MissouriNeedKernel Missouri(double removed) => new()
    {
        TargetBase = 49,
        TargetPerCapacity = 0,
        Factor = 80,
        Years = 8,
        Removed = removed,
        Replaces = removed > 0,
    };

    [Theory]
    [InlineData(48.9, true, false)]
    [InlineData(49, false, true)]
    [InlineData(60, false, true)]
    public void Missouri_builds_below_its_target_and_warns_from_it_on(double test, bool builds, bool warns)
    {
        var kernel = Missouri(removed: 30);
        Assert.Equal(builds, kernel.Builds(test, 12));
        Assert.Equal(builds, kernel.Rate(test, 12) > 30);
        Assert.Equal(warns ? NeedRemarks.NoUpperLimit : NeedRemarks.None, kernel.Remarks(test, 12, 30));
    }

    [Fact]
    public void Missouri_does_not_warn_where_nothing_is_carried_off()
    {
        var browsed = Missouri(removed: 0);
        Assert.Equal(NeedRemarks.None, browsed.Remarks(60, 12, 0));
        Assert.Equal(NeedRemarks.None, browsed.Raises);
        Assert.Equal(NeedRemarks.NoUpperLimit, (browsed with { Replaces = true }).Raises);
    }

    [Theory]
    [InlineData(0, false)]
    [InlineData(5, true)]
    public void Missouris_target_goes_by_the_exchange_capacity_where_the_nutrient_s_does(double perCapacity, bool reads)
    {
        var kernel = new MissouriNeedKernel
        {
            TargetBase = 220,
            TargetPerCapacity = perCapacity,
            Factor = 75,
            Years = 8,
            Removed = 0,
            Replaces = false,
        };
        Assert.Equal(reads, kernel.ReadsCapacity);
        Assert.Equal(reads, kernel.Rate(100, 5) != kernel.Rate(100, 20));
    }

    [Fact]
    public void A_remark_of_two_classes_is_raised_as_much_as_one_of_a_single_class()
    {
        var kernel = new ClassNeedKernel
        {
            Limits = default,
            Needs =
            [
                ClassNeed.None(NeedRemarks.RatesNotHeld),
                new(20, 40, NeedRemarks.RangeOnly),
                ClassNeed.None(NeedRemarks.RatesNotHeld),
            ],
        };
        Assert.Equal(NeedRemarks.RatesNotHeld | NeedRemarks.RangeOnly, kernel.Raises);
        Assert.False(kernel.ReadsCapacity);
    }

    /// <summary>Tri-State 1995 with levels 100 below which each ppm takes 1 lb: at 60 ppm 40 lb and 20 lb of removal.</summary>
    private static TriState1995PotashKernel Potash(double cap) => new()
    {
        LevelBase = 75,
        LevelPerCapacity = 2.5,
        MaintenanceWidth = 30,
        DrawdownEnd = 50,
        FactorBase = 0.5,
        FactorPerCapacity = 0.05,
        Removed = 15,
        Extra = 5,
        Cap = cap,
    };

    [Theory]
    [InlineData(59, 59, true)]
    [InlineData(60, 60, false)]
    [InlineData(61, 60, false)]
    [InlineData(double.PositiveInfinity, 60, false)]
    public void A_yearly_cap_is_named_only_where_it_cuts(double cap, double rate, bool isNamed)
    {
        var kernel = Potash(cap);
        Assert.Equal(rate, kernel.Rate(60, 10));
        Assert.Equal(isNamed ? NeedRemarks.YearlyCap : NeedRemarks.None, kernel.Remarks(60, 10, rate));
        Assert.Equal(double.IsFinite(cap) ? NeedRemarks.YearlyCap : NeedRemarks.None, kernel.Raises);
    }

    [Fact]
    public void Tri_state_potash_goes_by_the_exchange_capacity_and_phosphate_does_not()
    {
        var loam = new TriState2020PotashKernel
        {
            CapacityLimit = 5,
            OnSand = (100, 130),
            OnLoam = (120, 170),
            FactorBase = 1,
            FactorPerCapacity = 0.05,
            Removed = 40,
            Extra = 0,
            IsTapered = false,
        };
        Assert.True(loam.ReadsCapacity);
        Assert.NotEqual(loam.Rate(90, 5), loam.Rate(90, 6));
        Assert.True(Potash(300).ReadsCapacity);
        Assert.NotEqual(Potash(300).Rate(60, 10), Potash(300).Rate(60, 11));
        var newer = new TriState2020PhosphateKernel { Critical = 20, Limit = 40, Factor = 5, Removed = 30 };
        Assert.False(newer.ReadsCapacity);
        Assert.Equal(newer.Rate(10, 5), newer.Rate(10, 20));
        var older = new TriState1995PhosphateKernel { Critical = 15, TaperStart = 30, TaperEnd = 40, Factor = 5, Removed = 30 };
        Assert.False(older.ReadsCapacity);
        Assert.Equal(older.Rate(10, 5), older.Rate(10, 20));
    }
}
