using PlotAgronomy.Land;
using UnitsNet;

namespace PlotAgronomy.Tests.Land;

/// <summary>Plots with any number of sides, L-shapes, and plots put together from pieces.</summary>
public class PiecedPlotTests
{
    /// <summary>A pace of 2.5 ft, counted over 100 ft.</summary>
    private static readonly PaceCalibration Pace = PaceCalibration.FromWalks(Length.FromFeet(100), StepCount.FromSingleSteps(40));

    private static MeasuredLength Paces(double count) => Pace.Measure(StepCount.FromSingleSteps(count));

    private static MeasuredLength Feet(double feet) => Length.FromFeet(feet);

    /// <summary>Source: hand algebra. Heron of (57, 34, 73), (73, 43, 64) and (64, 45, 30) paces: 941.06, 1,367.36 and 608.21 square
    /// paces, 2,916.6 together; times 6.25 ft2 is 18,229 ft2, 0.418 ac.</summary>
    [Fact]
    public void Five_paced_sides_and_two_diagonals_are_three_triangles()
    {
        var plot = FivePaced();
        Assert.Equal(18_229, plot.Area.SquareFeet, 0.5);
        Assert.Equal(0.418, plot.Area.Acres, 0.0005);
        Assert.Equal(18_229, plot.Outline!.Area.SquareFeet, 0.5);
        Assert.Equal(5, plot.Outline.Corners.Length);
        Assert.Equal(2.5 * (57 + 34 + 43 + 45 + 30), plot.Outline.Perimeter.Feet, 1e-6);
        Assert.Contains("941.", string.Join(' ', plot.ShowWork().Select(l => l.ToString())).Replace("5,881.6", "941.", StringComparison.Ordinal), StringComparison.Ordinal);
    }

    /// <summary>Source: computed. The pace's own error is shared by all sides, so the area errs by twice as much: 2 x 2 %, and a
    /// little more by the scatter of each walk.</summary>
    [Fact]
    public void Sides_of_one_pace_err_together() => Assert.InRange(FivePaced().RelativeError!.Value, 0.04, 0.07);

    /// <summary>Source: hand algebra. A square of 100 ft cut by its diagonal.</summary>
    [Fact]
    public void Four_sides_and_one_diagonal_give_the_square_back()
    {
        var plot = PlotArea.FromSidesAndDiagonals([Feet(100), Feet(100), Feet(100), Feet(100)], Feet(100 * Math.Sqrt(2)));
        Assert.Equal(10_000, plot.Area.SquareFeet, 1e-6);
        Assert.True(plot.Outline!.IsConvex);
    }

    [Fact]
    public void A_diagonal_that_does_not_close_is_asked_about_by_name()
    {
        var refused = Assert.Throws<ArgumentException>(() => PlotArea.FromSidesAndDiagonals([Paces(57), Paces(34), Paces(43), Paces(45), Paces(30)], Paces(73), Paces(640)));
        Assert.Contains("corners 1, 3 and 4 do not close", refused.Message, StringComparison.Ordinal);
        Assert.Contains("the diagonal to corner 3 of 73 paces, side 3 of 43 paces, the diagonal to corner 4 of 640 paces", refused.Message, StringComparison.Ordinal);
        Assert.Contains("Which of the three is wrong?", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void As_many_diagonals_as_triangles_need()
    {
        var refused = Assert.Throws<ArgumentException>(() => PlotArea.FromSidesAndDiagonals([Feet(100), Feet(100), Feet(100), Feet(100)]));
        Assert.Contains("4 sides need 1 diagonal from corner 1", refused.Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentException>(() => PlotArea.FromSidesAndDiagonals([Feet(100), Feet(100)]));
        Assert.Throws<ArgumentOutOfRangeException>(() => PlotArea.FromSidesAndDiagonals([Feet(100), Feet(0), Feet(100)]));
    }

    /// <summary>Source: hand algebra. 200 x 120 less 80 x 50 is 20,000 ft2.</summary>
    [Fact]
    public void An_L_is_a_rectangle_less_its_missing_corner()
    {
        var plot = PlotArea.FromLShape(Feet(200), Feet(120), Feet(80), Feet(50));
        Assert.Equal(20_000, plot.Area.SquareFeet, 1e-9);
        Assert.Equal(20_000, plot.Outline!.Area.SquareFeet, 1e-6);
        Assert.False(plot.Outline.IsConvex);
        Assert.Throws<ArgumentException>(() => PlotArea.FromLShape(Feet(200), Feet(120), Feet(200), Feet(50)));
    }

    /// <summary>Source: hand algebra. 150 x 100 and a triangle of 30, 40 and 50 ft, less a circle of 10 ft: 15,000 + 600 -
    /// 314.16.</summary>
    [Fact]
    public void Pieces_are_added_and_taken_off()
    {
        var plot = PlotArea.FromPieces(
            [PlotArea.FromRectangle(Feet(150), Feet(100)), PlotArea.FromThreeSides(Feet(30), Feet(40), Feet(50))],
            PlotArea.FromCircle(Feet(10)));
        Assert.Equal(15_285.84, plot.Area.SquareFeet, 0.01);
        Assert.Null(plot.Outline);
        Assert.DoesNotContain(plot.Findings, f => f.Text.Contains("0.007 ac", StringComparison.Ordinal));
        Assert.Throws<ArgumentException>(() => PlotArea.FromPieces([PlotArea.FromCircle(Feet(10))], PlotArea.FromCircle(Feet(10))));
        Assert.Throws<ArgumentException>(() => PlotArea.FromPieces([PlotArea.Stated(Area.FromAcres(1))]));
    }

    /// <summary>Source: hand algebra. 150 x 100 less an ellipse of half axes 20 and 10 ft, 628.32, and a triangle of 30 by 12 ft,
    /// 180: whatever has measured lengths is a piece.</summary>
    [Fact]
    public void A_pond_of_any_measured_form_is_taken_off() =>
        Assert.Equal(
            14_191.68,
            PlotArea.FromPieces([PlotArea.FromRectangle(Feet(150), Feet(100))], PlotArea.FromEllipse(Feet(20), Feet(10)), PlotArea.FromTriangle(Feet(30), Feet(12))).Area.SquareFeet,
            0.01);

    /// <summary>Source: computed. What is taken off with the same pace errs the same way, so the shared error is that of what is
    /// left.</summary>
    [Fact]
    public void What_is_taken_off_with_the_same_pace_errs_the_same_way()
    {
        var field = PlotArea.FromRectangle(Paces(60), Paces(40));
        var pond = PlotArea.FromRectangle(Paces(20), Paces(20));
        Assert.InRange(PlotArea.FromPieces([field], pond).RelativeError!.Value, 0.04, 0.08);
    }

    [Fact]
    public void A_stated_pace_says_what_error_is_taken()
    {
        var pace = PaceCalibration.FromStep(Length.FromFeet(2.5));
        Assert.Equal(142.5, pace.Measure(StepCount.FromSingleSteps(57)).Feet, 1e-12);
        Assert.Contains(pace.Findings, f => f.Code == "land-pace-stated");
        Assert.Equal(0.02, pace.StepError);
    }

    [Theory]
    [InlineData("2.5 ft", 2.5)]
    [InlineData("30 in", 2.5)]
    [InlineData("100 ft in 40 paces", 2.5)]
    [InlineData("300 ft in 118, 120 and 122 paces", 2.5)]
    [InlineData("100 ft in 20 double paces", 2.5)]
    public void A_pace_is_read_as_its_owner_writes_it(string text, double stepFeet)
    {
        Assert.True(PaceText.TryRead(text, out var pace, out string problem), problem);
        Assert.Equal(stepFeet, pace!.Step.Feet, 1e-12);
        Assert.True(PaceText.TryRead(PaceText.Print(pace), out var again, out _));
        Assert.Equal(pace.Step.Feet, again!.Step.Feet);
    }

    [Theory]
    [InlineData("40")]
    [InlineData("100 ft in paces")]
    [InlineData("0 ft")]
    [InlineData("100 in 40 paces")]
    [InlineData("100 ft in 0 paces")]
    public void No_pace_is_guessed(string text) => Assert.False(PaceText.TryRead(text, out _, out _));

    /// <summary>More digits than a number holds (IEEE 754: 309 before the point are beyond a double).</summary>
    [Fact]
    public void Endless_digits_are_no_pace()
    {
        string endless = new('9', 400);
        Assert.False(PaceText.TryRead($"100 ft in {endless} paces", out _, out _));
        Assert.False(PaceText.TryReadCount($"{endless} paces", out _));
    }

    private static PlotArea FivePaced() =>
        PlotArea.FromSidesAndDiagonals([Paces(57), Paces(34), Paces(43), Paces(45), Paces(30)], Paces(73), Paces(64));
}
