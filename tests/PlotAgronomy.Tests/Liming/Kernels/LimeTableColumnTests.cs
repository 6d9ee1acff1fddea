using MathNet.Numerics.Interpolation;
using PlotAgronomy.Liming;

namespace PlotAgronomy.Tests.Liming;

/// <summary>One column of a printed table, made here row by row: expected values are hand algebra, or the straight lines of a
/// general library.</summary>
public class LimeTableColumnTests
{
    private static readonly (double Reading, double Rate, bool IsMarked)[] Four =
        [(4, 100, false), (5, 40, false), (6, 20, true), (8, 10, false)];

    [Theory]
    [InlineData(4, 100, false)]
    [InlineData(5, 40, false)]
    [InlineData(6, 20, true)]
    [InlineData(8, 10, false)]
    public void At_a_row_its_rate_stands_as_printed(double reading, double rate, bool isMarked)
    {
        Assert.Equal(rate, new LimeTableColumn(Four).PoundsPerAcre(reading, out var remarks));
        Assert.Equal(isMarked ? LimeRemarks.CellMarked : LimeRemarks.None, remarks);
    }

    [Theory]
    [InlineData(4.25, 85, false)]
    [InlineData(4.5, 70, false)]
    [InlineData(5.5, 30, true)]
    [InlineData(7, 15, true)]
    [InlineData(7.9, 10.5, true)]
    public void Between_rows_the_rate_lies_on_a_straight_line_and_either_row_s_mark_counts(
        double reading,
        double rate,
        bool isMarked
    )
    {
        Assert.Equal(rate, new LimeTableColumn(Four).PoundsPerAcre(reading, out var remarks), 1e-9);
        Assert.Equal(LimeRemarks.Interpolated | (isMarked ? LimeRemarks.CellMarked : LimeRemarks.None), remarks);
    }

    [Theory]
    [InlineData(3.9)]
    [InlineData(-100)]
    [InlineData(double.NegativeInfinity)]
    [InlineData(8.1)]
    [InlineData(1000)]
    [InlineData(double.PositiveInfinity)]
    [InlineData(double.NaN)]
    public void Beyond_the_first_and_the_last_row_there_is_no_rate_and_no_remark(double reading)
    {
        (double, double, bool)[] markedAtTheEnds = [.. Four.Select(cell => (cell.Reading, cell.Rate, true))];
        foreach (var cells in new[] { Four, markedAtTheEnds })
        {
            Assert.True(double.IsNaN(new LimeTableColumn(cells).PoundsPerAcre(reading, out var remarks)));
            Assert.Equal(LimeRemarks.None, remarks);
        }
    }

    [Theory]
    [InlineData(3.9, -1, -1)]
    [InlineData(4, 0, 0)]
    [InlineData(4.5, 0, 1)]
    [InlineData(5, 1, 1)]
    [InlineData(7, 2, 3)]
    [InlineData(8, 3, 3)]
    [InlineData(8.1, -1, -1)]
    public void The_rows_around_a_reading_are_counted_from_the_first(double reading, int below, int above) =>
        Assert.Equal((below, above), new LimeTableColumn(Four).Around(reading));

    [Fact]
    public void A_row_at_a_reading_of_zero_is_a_row_as_any_other()
    {
        var column = new LimeTableColumn([(0, 50, false), (2, 90, false)]);
        Assert.Equal((0, 0), column.Around(0));
        Assert.Equal(50, column.PoundsPerAcre(0, out _));
        Assert.Equal(70, column.PoundsPerAcre(1, out _));
    }

    [Fact]
    public void A_column_of_one_row_answers_there_alone()
    {
        var column = new LimeTableColumn([(6, 20, false)]);
        Assert.Equal(20, column.PoundsPerAcre(6, out _));
        Assert.True(double.IsNaN(column.PoundsPerAcre(5.99, out _)));
        Assert.True(double.IsNaN(column.PoundsPerAcre(6.01, out _)));
    }

    [Theory]
    [InlineData(0.1)]
    [InlineData(1)]
    [InlineData(25)]
    public void Rows_far_apart_and_close_together_are_all_found(double unit)
    {
        double[] readings = [.. new[] { -3, 0, 10, 10.1, 10.2, 10.3, 30, 30.1, 55, 100 }.Select(r => r * unit)];
        double[] rates = [9000, 8100, 7000, 6400, 5000, 4900, 3000, 2500, 400, 0];
        var column = new LimeTableColumn([.. readings.Zip(rates, (reading, rate) => (reading, rate, false))]);
        var line = LinearSpline.InterpolateSorted(readings, rates);
        for (double reading = readings[0]; reading <= readings[^1]; reading += 0.0371 * unit)
        {
            Assert.Equal(line.Interpolate(reading), column.PoundsPerAcre(reading, out _), 1e-6);
        }

        Assert.All(readings.Zip(rates), row => Assert.Equal(row.Second, column.PoundsPerAcre(row.First, out _)));
    }
}
