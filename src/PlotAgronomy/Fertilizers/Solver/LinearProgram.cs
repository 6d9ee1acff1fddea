namespace PlotAgronomy.Fertilizers;

/// <summary>Minimise cost x column, each column and each row held between two limits.</summary>
/// <remarks>A column of negative cost needs a finite upper limit; a lower limit is always finite. Row limits may be
/// infinite.</remarks>
internal sealed class LinearProgram
{
    private readonly double[] matrix;

    internal LinearProgram(int rows, int columns)
    {
        Rows = rows;
        Columns = columns;
        matrix = new double[rows * columns];
        Cost = new double[columns];
        ColumnLow = new double[columns];
        ColumnHigh = new double[columns];
        RowLow = new double[rows];
        RowHigh = new double[rows];
        Array.Fill(ColumnHigh, double.PositiveInfinity);
        Array.Fill(RowLow, double.NegativeInfinity);
        Array.Fill(RowHigh, double.PositiveInfinity);
    }

    internal int Rows { get; }

    internal int Columns { get; }

    internal double[] Cost { get; }

    internal double[] ColumnLow { get; }

    internal double[] ColumnHigh { get; }

    internal double[] RowLow { get; }

    internal double[] RowHigh { get; }

    internal double this[int row, int column]
    {
        get => matrix[(row * Columns) + column];
        set => matrix[(row * Columns) + column] = value;
    }

    internal ReadOnlySpan<double> Row(int row) => matrix.AsSpan(row * Columns, Columns);
}
