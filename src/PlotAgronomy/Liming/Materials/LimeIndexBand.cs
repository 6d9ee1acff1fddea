using PlotAgronomy.Reference;

namespace PlotAgronomy.Liming;

/// <summary>A size band of an index: what passes one sieve and is held on a finer one counts with a factor.</summary>
internal sealed record LimeIndexBand(int? PassingMesh, int? HeldOnMesh, double Factor, DataStatus Status)
{
    internal static LimeIndexBand FromRow(CsvRow row) =>
        new(
            row.TextOrNull("passing_mesh") is null ? null : row.Integer("passing_mesh"),
            row.TextOrNull("held_on_mesh") is null ? null : row.Integer("held_on_mesh"),
            row.Number("factor"),
            row.Status()
        );
}
