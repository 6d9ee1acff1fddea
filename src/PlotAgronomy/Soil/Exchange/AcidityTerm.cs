using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Soil;

/// <summary>A laboratory's way to get exchangeable acidity from a buffer pH, and so the exchange capacity of the soil.</summary>
/// <remarks>Acidity = factor x (start pH - buffer pH), never below zero. The same soil by two terms has two capacities.</remarks>
[JsonConverter(typeof(NotForJson))]
public sealed class AcidityTerm
{
    private static readonly Table<AcidityTerm> Table = new("Soil/Data/acidity-terms.csv", row => new AcidityTerm(row));

    private static readonly Catalog<AcidityTerm> Catalog = new("acidity term", () => Table.Rows, t => t.Id, t => t.Status);

    private readonly ImmutableArray<(SoilAnalyte Cation, double PerMilliequivalent)> divisors;

    private AcidityTerm(CsvRow row)
    {
        Id = row.Text("id");
        Title = row.Text("title");
        Buffers = row.Choices<SoilBuffer>("buffers");
        MilliequivalentsPerPhUnit = row.Number("acidity_meq_per_ph");
        StartPh = row.Number("start_ph");
        WaterPhLimit = row.NumberOrNull("water_ph_high");
        CountsSodium = row.YesOrNo("counts_sodium");
        Basis = row.Choice<CationChargeBasis>("basis");
        Origin = row.Origin();
        divisors =
        [
            (SoilAnalyte.Potassium, row.Number("k_ppm_per_meq")),
            (SoilAnalyte.Magnesium, row.Number("mg_ppm_per_meq")),
            (SoilAnalyte.Calcium, row.Number("ca_ppm_per_meq")),
            (SoilAnalyte.Sodium, row.Number("na_ppm_per_meq")),
        ];
    }

    /// <summary>Gets the terms that were seen in print, or are practice.</summary>
    public static ImmutableArray<AcidityTerm> All => Catalog.All;

    /// <summary>Gets the terms that are from memory; they answer only when asked for by name, with a finding.</summary>
    internal static ImmutableArray<AcidityTerm> Unchecked => Catalog.Unchecked;

    /// <summary>Gets the term of Clemson (South Carolina): 8 x (8.00 - Adams-Evans buffer pH).</summary>
    public static AcidityTerm Clemson => Find("clemson");

    /// <summary>Gets the term of commercial laboratories of the Midwest: 12 x (7.0 - SMP buffer
    /// pH) up to water pH 6.4, without sodium.</summary>
    public static AcidityTerm MidwestLaboratory => Find("laboratory-midwest");

    /// <summary>Gets the same by SMP with sodium among the bases, at any water pH.</summary>
    public static AcidityTerm SmpWithSodium => Find("smp-sodium-counted");

    /// <summary>Gets the id to ask for.</summary>
    public string Id { get; }

    /// <summary>Gets the term in words.</summary>
    public string Title { get; }

    /// <summary>Gets the buffers whose readings it takes.</summary>
    public ImmutableArray<SoilBuffer> Buffers { get; }

    /// <summary>Gets the acidity for each unit of pH below the start, in milliequivalents.</summary>
    public double MilliequivalentsPerPhUnit { get; }

    /// <summary>Gets the buffer pH at which acidity is zero.</summary>
    public double StartPh { get; }

    /// <summary>Gets the highest water pH at which the laboratory uses it, or null when it states none.</summary>
    public double? WaterPhLimit { get; }

    /// <summary>Gets whether sodium is one of the bases.</summary>
    public bool CountsSodium { get; }

    /// <summary>Gets whether the charges are by weight or by volume of soil.</summary>
    public CationChargeBasis Basis { get; }

    /// <summary>Gets how well the term is known.</summary>
    public DataStatus Status => Origin.Status;

    /// <summary>Gets where it stands and how well that is known.</summary>
    public Origin Origin { get; }

    internal ImmutableArray<(SoilAnalyte Cation, double PerMilliequivalent)> Divisors =>
        CountsSodium ? divisors : [.. divisors.Where(d => d.Cation != SoilAnalyte.Sodium)];

    /// <summary>Finds a term by its id, checked or not.</summary>
    /// <param name="id">Id such as <c>clemson</c>.</param>
    /// <returns>The term.</returns>
    /// <exception cref="KeyNotFoundException">No term has this id; the message lists all.</exception>
    public static AcidityTerm Find(string id) => Catalog.Find(id);

    /// <summary>Finds a term by its id, checked or not.</summary>
    /// <param name="id">Id such as <c>clemson</c>; may be null.</param>
    /// <param name="term">The term, or null.</param>
    /// <param name="problem">Why there is none, with a list of all ids; empty when there is one.</param>
    /// <returns>True when there is one.</returns>
    internal static bool TryFind(string? id, [NotNullWhen(true)] out AcidityTerm? term, out string problem) =>
        Catalog.TryFind(id, out term, out problem);

    /// <summary>Lists the terms that take a buffer, checked or not.</summary>
    /// <param name="buffer">Buffer.</param>
    /// <returns>The terms; empty when no published term takes it.</returns>
    public static ImmutableArray<AcidityTerm> For(SoilBuffer buffer)
    {
        Guard.Defined(buffer);
        return [.. Catalog.Everything.Where(t => t.Buffers.Contains(buffer))];
    }

    /// <summary>Text such as <c>Clemson (South Carolina) Adams-Evans</c>.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => Title;
}
