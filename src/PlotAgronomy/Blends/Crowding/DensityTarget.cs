using System.Collections.Immutable;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Blends;

/// <summary>Seeds or plants per ft2 that a publication or practice aims at.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class DensityTarget
{
    private static readonly Table<DensityTarget> Table = new("Blends/Data/density-targets.csv", r => new DensityTarget(r));

    private readonly KindSelector selector;

    private DensityTarget(CsvRow row)
    {
        Id = row.Text("id");
        Context = row.Text("context");
        LowPerSquareFoot = row.Number("low_per_ft2");
        HighPerSquareFoot = row.Number("high_per_ft2");
        Counted = row.Choice<DensityCount>("counted");
        Origin = row.Origin();
        selector = KindSelector.Read(row, "selects");
    }

    /// <summary>Gets all targets.</summary>
    public static IReadOnlyList<DensityTarget> All => Table.Rows;

    /// <summary>Gets the stable id.</summary>
    public string Id { get; }

    /// <summary>Gets what it was published for.</summary>
    public string Context { get; }

    /// <summary>Gets the lower end, a pure count per ft2.</summary>
    public double LowPerSquareFoot { get; }

    /// <summary>Gets the upper end, a pure count per ft2.</summary>
    public double HighPerSquareFoot { get; }

    /// <summary>Gets what is counted.</summary>
    public DensityCount Counted { get; }

    /// <summary>Gets where it stands and how well that is known.</summary>
    public Origin Origin { get; }

    /// <summary>The targets that speak of a kind.</summary>
    /// <param name="kind">Kind.</param>
    /// <returns>The targets, in the order of the table.</returns>
    public static ImmutableArray<DensityTarget> For(CropKind kind)
    {
        ArgumentNullException.ThrowIfNull(kind);
        return [.. Table.Rows.Where(t => t.Covers(kind))];
    }

    /// <summary>Says whether the target speaks of a kind.</summary>
    /// <param name="kind">Kind.</param>
    /// <returns>True when it does.</returns>
    public bool Covers(CropKind kind)
    {
        ArgumentNullException.ThrowIfNull(kind);
        return selector.Selects(kind);
    }

    /// <summary>The target in words.</summary>
    /// <returns>Text such as <c>10-20 per ft2: brassicas alone, the whole stand</c>.</returns>
    public override string ToString()
    {
        string low = Amounts.Print(LowPerSquareFoot, 1);
        string high = Amounts.Print(HighPerSquareFoot, 1);
        string range = low == high ? low : $"{low}-{high}";
        return $"{range} per ft2: {Context}";
    }
}
