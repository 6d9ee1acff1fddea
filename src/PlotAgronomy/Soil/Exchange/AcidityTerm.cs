using System.Collections.Immutable;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Soil;

/// <summary>A laboratory's way to get exchangeable acidity from a buffer pH, and so the exchange capacity of the soil.</summary>
/// <remarks>Acidity = factor x (start pH - buffer pH), never below zero. The same soil by two terms has two capacities.</remarks>
public sealed class AcidityTerm
{
    private static readonly Lazy<ImmutableArray<AcidityTerm>> Table = new(() =>
        [
            .. CsvTable
                .Embedded(
                    "Soil/Data/acidity-terms.csv",
                    "id",
                    "title",
                    "buffers",
                    "factor_meq_per_ph",
                    "start_ph",
                    "water_ph_limit",
                    "sodium_counted",
                    "basis",
                    "ca_ppm_per_meq",
                    "mg_ppm_per_meq",
                    "k_ppm_per_meq",
                    "na_ppm_per_meq",
                    "source_id",
                    "locator",
                    "status"
                )
                .Rows.Select(r => new AcidityTerm(r)),
        ]
    );

    private readonly ImmutableArray<(SoilAnalyte Cation, double PerMilliequivalent)> divisors;

    private AcidityTerm(CsvRow row)
    {
        Id = row.Text("id");
        Title = row.Text("title");
        Buffers = [.. row.Text("buffers").Split(';').Select(Enum.Parse<SoilBuffer>)];
        MilliequivalentsPerPhUnit = row.Number("factor_meq_per_ph");
        StartPh = row.Number("start_ph");
        WaterPhLimit = row.NumberOrNull("water_ph_limit");
        CountsSodium = row.Text("sodium_counted") == "yes";
        Basis = row.Choice<CationChargeBasis>("basis");
        SourceId = row.SourceId();
        Status = row.Status();
        divisors =
        [
            (SoilAnalyte.Potassium, row.Number("k_ppm_per_meq")),
            (SoilAnalyte.Magnesium, row.Number("mg_ppm_per_meq")),
            (SoilAnalyte.Calcium, row.Number("ca_ppm_per_meq")),
            (SoilAnalyte.Sodium, row.Number("na_ppm_per_meq")),
        ];
    }

    /// <summary>Gets every published term.</summary>
    public static ImmutableArray<AcidityTerm> All => Table.Value;

    /// <summary>Gets the name to ask for.</summary>
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

    /// <summary>Gets the id of the source.</summary>
    public string SourceId { get; }

    /// <summary>Gets how well the term is known.</summary>
    public DataStatus Status { get; }

    internal ImmutableArray<(SoilAnalyte Cation, double PerMilliequivalent)> Divisors =>
        CountsSodium ? divisors : [.. divisors.Where(d => d.Cation != SoilAnalyte.Sodium)];

    /// <summary>Finds a term by its name.</summary>
    /// <param name="id">Name such as <c>clemson</c>.</param>
    /// <returns>The term.</returns>
    /// <exception cref="KeyNotFoundException">No term has this name.</exception>
    public static AcidityTerm Named(string id) =>
        All.FirstOrDefault(t => t.Id == id)
        ?? throw new KeyNotFoundException(
            $"No acidity term is named '{id}'; there are {string.Join(", ", All.Select(t => t.Id))}."
        );

    /// <summary>Lists the terms that take a buffer.</summary>
    /// <param name="buffer">Buffer.</param>
    /// <returns>The terms; empty when no published term takes it.</returns>
    public static ImmutableArray<AcidityTerm> For(SoilBuffer buffer)
    {
        Guard.Defined(buffer);
        return [.. All.Where(t => t.Buffers.Contains(buffer))];
    }

    /// <summary>Text such as <c>Clemson (South Carolina) Adams-Evans</c>.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => Title;
}
