namespace PlotAgronomy.Reference;

/// <summary>A single number of a table.</summary>
internal sealed class Constant
{
    internal required string Id { get; init; }

    internal required double Value { get; init; }

    internal required string Unit { get; init; }

    internal required Origin Origin { get; init; }

    internal DataStatus Status => Origin.Status;

    public static implicit operator double(Constant constant) => constant.Value;

    internal static Constant FromRow(CsvRow row) =>
        new()
        {
            Id = row.Text("id"),
            Value = row.Number("value"),
            Unit = row.Text("unit"),
            Origin = row.Origin(),
        };
}
