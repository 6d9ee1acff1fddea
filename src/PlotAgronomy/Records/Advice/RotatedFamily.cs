using PlotAgronomy.Reference;
using PlotAgronomy.Seeds;

namespace PlotAgronomy.Records;

/// <summary>A family whose annual kinds are not sown on one ground year after year.</summary>
internal sealed class RotatedFamily
{
    private static readonly Table<RotatedFamily> Families = new("Records/Data/rotated-families.csv", r => new RotatedFamily(r));

    private readonly string family;

    private RotatedFamily(CsvRow row)
    {
        _ = row.Text("id");
        family = row.Text("family");
        Words = row.Text("words");
        _ = row.Origin();
    }

    internal static IEnumerable<RotatedFamily> All => Families.Rows;

    /// <summary>Gets what an owner calls it.</summary>
    internal string Words { get; }

    internal bool Holds(CropKind kind) => kind.LifeCycle == LifeCycle.Annual && kind.Family == family;
}
