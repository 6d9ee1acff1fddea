using PlotAgronomy.Land;

namespace PlotAgronomy.Tests.Land;

/// <summary>Triangles and places where a plain formula fails: thin, level with a corner, without a length.</summary>
public class LandMathTests
{
    private static readonly PlanePoint[] Diamond = [At(0, 5), At(5, 0), At(10, 5), At(5, 10)];

    private static PlanePoint At(double east, double north) => PlanePoint.FromFeet(east, north);

    [Fact]
    public void A_needle_keeps_its_digits_in_whatever_order_its_sides_are_named()
    {
        // The same three numbers by exact fractions: the root of 1600.00002464... over 4.
        double[] sides = [100000, 99999.99979, 0.00029];
        Assert.All(
            new[] { (0, 1, 2), (0, 2, 1), (1, 0, 2), (1, 2, 0), (2, 0, 1), (2, 1, 0) },
            order => Assert.Equal(
                10.000000077021038,
                LandMath.TriangleSquareFeet(sides[order.Item1], sides[order.Item2], sides[order.Item3]),
                1e-12
            )
        );
    }

    [Theory]
    [InlineData(3, 4, 5, 2)] // 3 (16 + 25 - 9) / (8 x 6)
    [InlineData(5, 3, 4, 0)] // the angle that the hypotenuse faces is right, where the area is largest
    [InlineData(13, 14, 15, 4.875)] // 13 (196 + 225 - 169) / (8 x 84)
    public void The_area_of_a_triangle_grows_with_a_side_as_the_difference_quotient_says(
        double a,
        double b,
        double c,
        double perFoot
    )
    {
        double area = LandMath.TriangleSquareFeet(a, b, c);
        double quotient = (LandMath.TriangleSquareFeet(a + 1e-5, b, c) - LandMath.TriangleSquareFeet(a - 1e-5, b, c)) / 2e-5;
        Assert.Equal(quotient, LandMath.TriangleAreaPerFoot(a, b, c, area), 1e-6);
        Assert.Equal(perFoot, LandMath.TriangleAreaPerFoot(a, b, c, area), 1e-9);
    }

    [Fact]
    public void A_segment_without_length_is_as_far_as_its_point()
    {
        Assert.Equal(5, LandMath.DistanceFeet(At(3, 4), At(0, 0), At(0, 0)));
        Assert.Equal(0, LandMath.DistanceFeet(At(3, 4), At(3, 4), At(3, 4)));
    }

    [Theory]
    [InlineData(3, 4, 4)] // beside it
    [InlineData(-3, 4, 5)] // before the start
    [InlineData(13, 4, 5)] // behind the end
    public void A_place_is_as_far_from_a_segment_as_from_its_nearest_point(double east, double north, double feet) =>
        Assert.Equal(feet, LandMath.DistanceFeet(At(east, north), At(0, 0), At(10, 0)));

    [Theory]
    [InlineData(5, 5, true)]
    [InlineData(1, 5, true)]
    [InlineData(9, 5, true)]
    [InlineData(-1, 5, false)]
    [InlineData(11, 5, false)]
    [InlineData(5, 11, false)]
    [InlineData(-5, 10, false)]
    [InlineData(-5, 0, false)]
    public void A_place_level_with_a_corner_is_inside_or_outside_as_any_other(double east, double north, bool inside) =>
        Assert.Equal(inside, LandMath.Contains(Diamond, At(east, north)));
}
