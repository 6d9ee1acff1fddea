using MathNet.Numerics;
using PlotAgronomy.Nutrients;
using PlotAgronomy.Soil;
using static PlotAgronomy.Tests.Nutrients.SystemRequests;

namespace PlotAgronomy.Tests.Nutrients;

/// <summary>The kernels against a general-purpose numerical library.</summary>
public class SystemOracleTests
{
    public static TheoryData<int> Equations => [.. Enumerable.Range(1, 25).Where(n => n != 22)];

    [Theory, MemberData(nameof(Equations))]
    public void A_curve_ends_at_the_smaller_root_a_root_finder_finds(int number)
    {
        var equation = NorthCarolinaEquation.Find(number);
        var (first, second) = FindRoots.Quadratic(equation.C, -equation.B, equation.A);
        double zero = SystemMath.FirstZero(equation.A, equation.B, equation.C);
        if (first.IsReal())
        {
            Assert.Equal(Math.Min(first.Real, second.Real), zero, 1e-6);
        }
        else
        {
            Assert.Equal(double.PositiveInfinity, zero);
        }
    }

    [Theory, MemberData(nameof(Equations))]
    public void A_curve_before_its_end_is_the_polynomial(int number)
    {
        var equation = NorthCarolinaEquation.Find(number);
        var polynomial = new Polynomial(equation.C, -equation.B, equation.A);
        for (double index = 0; index < equation.StopsAt && index <= 300; index += 7.3)
        {
            Assert.Equal(polynomial.Evaluate(index), equation.Rate(index), 1e-9);
        }
    }

    [Fact]
    public void Oklahomas_table_is_read_as_a_linear_spline()
    {
        var spline = Interpolate.Linear([0, 10, 20, 40, 65], [80, 60, 40, 20, 0]);
        for (double index = 0; index <= 65; index += 0.7)
        {
            double rate = RecommendationSystem.Oklahoma.Recommend(Report(P(index, SoilTestUnit.OklahomaIndex, Extractant.Mehlich3)), CropUse.Browsed(CropRow.SmallGrain)).Phosphate!.Rate.PoundsPerAcre;
            Assert.Equal(spline.Interpolate(index), rate, 1e-9);
        }
    }
}
