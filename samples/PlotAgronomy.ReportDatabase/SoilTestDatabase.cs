using DuckDB.NET.Data;
using PlotAgronomy.Columns;

namespace PlotAgronomy.ReportDatabase;

/// <summary>An analytical database inside this process, with columns of the library as its functions.</summary>
internal sealed class SoilTestDatabase : IDisposable
{
    private readonly DuckDBConnection connection = new("DataSource=:memory:");

    internal SoilTestDatabase() => connection.Open();

    public void Dispose() => connection.Dispose();

    internal void Add(string name, LimeColumn column) => new LimeFunction(column).AddTo(connection, name);

    internal void Run(string sql)
    {
        using var command = connection.CreateCommand();
        command.CommandText = sql;
        command.ExecuteNonQuery();
    }

    internal List<object[]> Rows(string sql)
    {
        using var command = connection.CreateCommand();
        command.CommandText = sql;
        using var reader = command.ExecuteReader();
        var rows = new List<object[]>();
        while (reader.Read())
        {
            object[] row = new object[reader.FieldCount];
            reader.GetValues(row);
            rows.Add(row);
        }

        return rows;
    }

    internal double[] Numbers(string sql)
    {
        using var command = connection.CreateCommand();
        command.CommandText = sql;
        using var reader = command.ExecuteReader();
        var numbers = new List<double>();
        while (reader.Read())
        {
            numbers.Add(reader.GetDouble(0));
        }

        return [.. numbers];
    }
}
