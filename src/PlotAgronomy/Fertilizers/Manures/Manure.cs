using System.Collections.Immutable;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Fertilizers;

/// <summary>Total nutrients in a manure or litter, as a range in lb per short ton as it is spread.</summary>
/// <remarks>Litter varies widely: analyse the lot. A single printed figure has both ends alike.</remarks>
public sealed class Manure
{
    private static readonly Table<Manure> Everything = new("Fertilizers/Data/manures.csv", FromRow);

    private Manure(
        string id,
        string name,
        PoundsPerTonRange nitrogen,
        PoundsPerTonRange phosphate,
        PoundsPerTonRange potash,
        string sourceId,
        DataStatus status
    )
    {
        Id = id;
        Name = name;
        Nitrogen = nitrogen;
        Phosphate = phosphate;
        Potash = potash;
        SourceId = sourceId;
        Status = status;
    }

    /// <summary>Gets the manures of the table.</summary>
    public static ImmutableArray<Manure> All => Everything.Rows;

    /// <summary>Gets the id.</summary>
    public string Id { get; }

    /// <summary>Gets the name.</summary>
    public string Name { get; }

    /// <summary>Gets total N.</summary>
    public PoundsPerTonRange Nitrogen { get; }

    /// <summary>Gets total P2O5.</summary>
    public PoundsPerTonRange Phosphate { get; }

    /// <summary>Gets total K2O.</summary>
    public PoundsPerTonRange Potash { get; }

    /// <summary>Gets the id of the source.</summary>
    public string SourceId { get; }

    /// <summary>Gets how well the figures are known to stand there.</summary>
    public DataStatus Status { get; }

    /// <summary>Finds a manure of the table.</summary>
    /// <param name="id">Id such as <c>poultry-litter-broiler</c>.</param>
    /// <returns>The manure.</returns>
    /// <exception cref="KeyNotFoundException">No such manure.</exception>
    public static Manure Find(string id) =>
        All.FirstOrDefault(m => m.Id == Guard.NotBlank(id)) ?? throw new KeyNotFoundException($"No manure has the id '{id}'.");

    /// <summary>A lot with its own analysis.</summary>
    /// <param name="name">Name of the lot.</param>
    /// <param name="nitrogen">Total N, lb per short ton as spread; at least 0.</param>
    /// <param name="phosphate">Total P2O5, lb per short ton; at least 0.</param>
    /// <param name="potash">Total K2O, lb per short ton; at least 0.</param>
    /// <returns>The lot.</returns>
    /// <exception cref="ArgumentException">No name, or a value outside its range.</exception>
    public static Manure Analyzed(string name, double nitrogen, double phosphate, double potash) =>
        new(
            "analyzed",
            Guard.NotBlank(name),
            PoundsPerTonRange.Of(nitrogen, nitrogen),
            PoundsPerTonRange.Of(phosphate, phosphate),
            PoundsPerTonRange.Of(potash, potash),
            "PRACTICE",
            DataStatus.Read
        );

    /// <summary>Rate that brings a need of available nitrogen, and what else it brings.</summary>
    /// <param name="need">Available nitrogen wanted.</param>
    /// <param name="available">Part of total N available in the season; above 0. See <see cref="ManureAvailability"/>.</param>
    /// <returns>The rate as a range; the rich end needs least.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Available part is zero, or the manure holds no nitrogen.</exception>
    /// <remarks>tons per acre = need / (total N x available part).</remarks>
    public ManureRate ForNitrogen(ApplicationRate need, Fraction available)
    {
        Guard.Above(available.Value, 0, "(a part of the whole)", nameof(available));
        return Rate(need, Nitrogen.Times(available.Value), available, "N");
    }

    /// <summary>Rate that brings a need of P2O5, and what else it brings: the honest base where the soil test is medium or
    /// higher.</summary>
    /// <param name="need">P2O5 wanted.</param>
    /// <param name="available">Part of total N available in the season.</param>
    /// <returns>The rate as a range.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The manure holds no phosphate.</exception>
    public ManureRate ForPhosphate(ApplicationRate need, Fraction available) => Rate(need, Phosphate, available, "P2O5");

    private ManureRate Rate(ApplicationRate need, PoundsPerTonRange content, Fraction available, string basis)
    {
        Guard.Above(content.Low, 0, $"lb {basis} per ton", nameof(content));
        return new ManureRate(
            this,
            need,
            basis,
            End(need.PoundsPerAcre / content.High, available, rich: true),
            End(need.PoundsPerAcre / content.Low, available, rich: false)
        );
    }

    /// <summary>The lot at the rich end of every range, or at the poor end.</summary>
    private ManureRateEnd End(double tonsPerAcre, Fraction available, bool rich)
    {
        return new ManureRateEnd
        {
            Rate = ApplicationRate.FromShortTonsPerAcre(tonsPerAcre),
            AvailableNitrogen = Brings(Nitrogen) * available.Value,
            Phosphate = Brings(Phosphate),
            Potash = Brings(Potash),
        };

        ApplicationRate Brings(PoundsPerTonRange content) =>
            ApplicationRate.FromPoundsPerAcre(tonsPerAcre * (rich ? content.High : content.Low));
    }

    private static Manure FromRow(CsvRow row) =>
        new(
            row.Text("id"),
            row.Text("name"),
            Range(row, "n"),
            Range(row, "p2o5"),
            Range(row, "k2o"),
            row.SourceId(),
            row.Status()
        );

    private static PoundsPerTonRange Range(CsvRow row, string nutrient) =>
        PoundsPerTonRange.Of(row.Number($"{nutrient}_low_lb_per_ton"), row.Number($"{nutrient}_high_lb_per_ton"));
}
