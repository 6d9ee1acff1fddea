using PlotAgronomy.Reference;

namespace PlotAgronomy.Liming;

/// <summary>Kinds sown for weeks to smother weeds: nobody limes for them.</summary>
internal static class SmotherCrops
{
    private static readonly Lazy<IReadOnlySet<string>> Ids = new(() =>
        Table.Read("Liming/Data/smother-crops.csv", Id).ToHashSet(StringComparer.Ordinal)
    );

    internal static bool Holds(CropKind kind) => Ids.Value.Contains(kind.Id);

    private static string Id(CsvRow row)
    {
        _ = row.Origin();
        return row.Text("kind_id");
    }
}
