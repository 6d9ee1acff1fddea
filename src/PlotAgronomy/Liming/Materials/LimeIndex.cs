using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Liming;

/// <summary>A state's way of rating a liming material: calcium carbonate equivalent, fineness and sometimes moisture in one
/// figure.</summary>
/// <remarks>Figures of two indices are never converted into each other: only the material's sieve analysis and calcium
/// carbonate equivalent lead from one to the other. Compare ids, or use the same instance.</remarks>
[JsonConverter(typeof(NotForJson))]
public sealed class LimeIndex
{
    private static readonly Catalog<LimeIndex> Catalog = new("lime index", Read, i => i.Id, i => i.Status);

    private LimeIndex(CsvRow row, ImmutableArray<LimeIndexBand> bands)
    {
        Id = row.Text("id");
        Name = row.Text("name");
        Unit = row.Text("unit");
        Whole = row.Number("whole");
        CountsMoisture = row.YesOrNo("counts_moisture");
        IsStatedOnly = row.YesOrNo("stated_only");
        IsRelative = row.YesOrNo("relative");
        Origin = row.Origin();
        Bands = bands;
        Sieves = [.. bands.SelectMany(b => new[] { b.PassingMesh, b.HeldOnMesh }).OfType<int>().Distinct().Order()];
        Status = bands.Any(b => b.Status == DataStatus.Memory) ? DataStatus.Memory : row.Status();
    }

    /// <summary>Gets the indices whose numbers were all read in a publication, or are practice, in the order of their
    /// ids.</summary>
    public static ImmutableArray<LimeIndex> All => Catalog.All;

    /// <summary>Gets the indices with a number from memory; a figure computed in one carries a finding.</summary>
    internal static ImmutableArray<LimeIndex> Unchecked => Catalog.Unchecked;

    /// <summary>Gets the calcium carbonate equivalent alone (neutralizing value): fineness is not counted.</summary>
    public static LimeIndex CalciumCarbonateEquivalent => Find("cce");

    /// <summary>Gets Missouri's effective neutralizing material, lb/ton.</summary>
    public static LimeIndex MissouriEnm => Find("missouri-enm");

    /// <summary>Gets Oregon's lime score, %.</summary>
    public static LimeIndex OregonScore => Find("oregon-score");

    /// <summary>Gets North Carolina's share of one ton of its standard lime, %.</summary>
    public static LimeIndex NorthCarolinaStandard => Find("north-carolina-standard");

    /// <summary>Gets the stable id.</summary>
    public string Id { get; }

    /// <summary>Gets the name.</summary>
    public string Name { get; }

    /// <summary>Gets the unit its figures are printed in: <c>%</c> or <c>lb/ton</c>.</summary>
    public string Unit { get; }

    /// <summary>Gets the figure of pure, dry calcium carbonate powder, in <see cref="Unit"/>; of the standard lime where the
    /// index is relative.</summary>
    public double Whole { get; }

    /// <summary>Gets a value indicating whether the formula takes off the moisture.</summary>
    public bool CountsMoisture { get; }

    /// <summary>Gets a value indicating whether only a label or a laboratory can state the figure, because it follows from no
    /// formula.</summary>
    public bool IsStatedOnly { get; }

    /// <summary>Gets how well its numbers are known: memory when any of its fineness factors is.</summary>
    public DataStatus Status { get; }

    /// <summary>Gets the sieves its fineness is counted on, US mesh numbers, coarse to fine; empty when fineness is not
    /// counted.</summary>
    public ImmutableArray<int> Sieves { get; }

    /// <summary>Gets a value indicating whether the figure counts against a state's standard lime, so that even pure powder has
    /// none unless it is stated.</summary>
    public bool IsRelative { get; }

    /// <summary>Gets where it stands and how well that is known.</summary>
    public Origin Origin { get; }

    internal ImmutableArray<LimeIndexBand> Bands { get; }

    /// <summary>Gets the indices, checked or not, in the order of their ids.</summary>
    internal static ImmutableArray<LimeIndex> Everything => Catalog.Everything;

    /// <summary>Finds an index, checked or not.</summary>
    /// <param name="id">Id, such as <c>ohio-enp</c>.</param>
    /// <returns>The index.</returns>
    /// <exception cref="KeyNotFoundException">No index has this id; the message lists all.</exception>
    public static LimeIndex Find(string id) => Catalog.Find(id);

    /// <summary>Looks for an index, checked or not.</summary>
    /// <param name="id">Id; may be null.</param>
    /// <param name="entry">The index, when there is one.</param>
    /// <param name="problem">What is wrong, with a list of all ids, when there is none; else empty.</param>
    /// <returns>True when there is one.</returns>
    internal static bool TryFind(string? id, [NotNullWhen(true)] out LimeIndex? entry, out string problem) =>
        Catalog.TryFind(id, out entry, out problem);

    /// <summary>Share of a material that this index counts as effective for its fineness.</summary>
    /// <param name="sieves">Sieve analysis with this index's sieves.</param>
    /// <returns>Fineness as a pure number from 0 to 1; 1 when the index counts none.</returns>
    /// <exception cref="ArgumentException">A sieve of the index is missing in the analysis.</exception>
    /// <remarks>fineness = sum over the bands of factor x (share passing the coarser sieve - share passing the finer
    /// one).</remarks>
    public double FinenessShare(SieveAnalysis sieves)
    {
        ArgumentNullException.ThrowIfNull(sieves);
        double fineness = Bands.IsEmpty ? 1 : 0;
        foreach (var band in Bands)
        {
            fineness += LimeStrength.FinenessOfBand(
                band.Factor,
                Passing(sieves, band.PassingMesh, 1),
                Passing(sieves, band.HeldOnMesh, 0)
            );
        }

        return fineness;
    }

    /// <summary>The name.</summary>
    /// <returns>The name.</returns>
    public override string ToString() => Name;

    private static double Passing(SieveAnalysis sieves, int? mesh, double none) =>
        mesh is int m ? sieves.SharePassing(m).Value : none;

    private static IEnumerable<LimeIndex> Read()
    {
        var bands = Table.Grouped("Liming/Data/index-bands.csv", r => r.Text("index_id"), LimeIndexBand.FromRow).Value;
        return Table
            .Read("Liming/Data/indices.csv", r => new LimeIndex(r, [.. bands[r.Text("id")]]))
            .OrderBy(i => i.Id, StringComparer.Ordinal);
    }
}
