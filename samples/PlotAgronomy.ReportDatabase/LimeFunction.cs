using DuckDB.NET.Data;
using DuckDB.NET.Data.DataChunk.Reader;
using DuckDB.NET.Data.DataChunk.Writer;
using PlotAgronomy.Columns;

namespace PlotAgronomy.ReportDatabase;

/// <summary>A column of lime as a function of the database: it takes water pH and buffer pH and gives lb/ac, or null where the
/// method does not answer.</summary>
internal sealed class LimeFunction(LimeColumn column)
{
    internal void AddTo(DuckDBConnection database, string name) =>
        database.RegisterScalarFunction<double, double, double?>(
            name,
            Answer,
            new ScalarFunctionOptions { IsPureFunction = true }
        );

    /// <summary>The database hands in some two thousand rows at a time, from several threads.</summary>
    private void Answer(IReadOnlyList<IDuckDBDataReader> read, IDuckDBDataWriter written, ulong count)
    {
        int rows = checked((int)count);
        Span<double> waterPh = new double[rows],
            reading = new double[rows],
            rates = new double[rows];
        for (int i = 0; i < rows; i++)
        {
            waterPh[i] = read[0].GetValue<double>((ulong)i);
            reading[i] = read[1].GetValue<double>((ulong)i);
        }

        var status = new RowStatus[rows];
        column.Rates(waterPh, reading, rates, status, new ulong[rows]);
        for (int i = 0; i < rows; i++)
        {
            if (status[i] is RowStatus.Answered or RowStatus.NoneNeeded)
            {
                written.WriteValue(rates[i], (ulong)i);
            }
            else
            {
                written.WriteNull((ulong)i);
            }
        }
    }
}
