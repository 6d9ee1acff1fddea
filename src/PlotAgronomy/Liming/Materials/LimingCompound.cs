using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Liming;

/// <summary>A pure compound and what it neutralizes, from its molar mass.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class LimingCompound
{
    private static readonly Catalog<LimingCompound> Catalog = new(
        "liming compound",
        () => Table.Read("Liming/Data/compounds.csv", r => new LimingCompound(r)).OrderBy(c => c.Id, StringComparer.Ordinal),
        c => c.Id,
        c => c.Status
    );

    private readonly IReadOnlyDictionary<string, int> atoms;
    private readonly int baseUnits;

    private LimingCompound(CsvRow row)
    {
        Id = row.Text("id");
        Name = row.Text("name");
        Formula = row.Text("formula");
        Origin = row.Origin();
        atoms = row.List("atoms")
            .ToDictionary(
                a => a.TrimEnd('0', '1', '2', '3', '4', '5', '6', '7', '8', '9'),
                a =>
                    int.Parse(
                        a.TrimStart([.. "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz"]),
                        NumberStyles.None,
                        CultureInfo.InvariantCulture
                    ),
                StringComparer.Ordinal
            );
        baseUnits = row.Integer("base_units");
        MolarMassGrams = atoms.Sum(a => a.Value * AtomicMasses.Of(a.Key));
    }

    /// <summary>Gets the compounds whose figures were read in a publication, in the order of their ids.</summary>
    public static ImmutableArray<LimingCompound> All => Catalog.All;

    /// <summary>Gets the compounds that are from memory.</summary>
    internal static ImmutableArray<LimingCompound> Unchecked => Catalog.Unchecked;

    /// <summary>Gets calcium carbonate, which all others are measured by.</summary>
    public static LimingCompound Calcite => Find("calcite");

    /// <summary>Gets calcium sulfate dihydrate, which neutralizes nothing.</summary>
    public static LimingCompound Gypsum => Find("gypsum");

    /// <summary>Gets the stable id, such as <c>dolomite</c>.</summary>
    public string Id { get; }

    /// <summary>Gets the name.</summary>
    public string Name { get; }

    /// <summary>Gets the chemical formula.</summary>
    public string Formula { get; }

    /// <summary>Gets where it stands and how well that is known.</summary>
    public Origin Origin { get; }

    /// <summary>Gets how well it is known.</summary>
    public DataStatus Status => Origin.Status;

    /// <summary>Gets the molar mass in g/mol, from the abridged standard atomic weights (MASS-IUPAC).</summary>
    public double MolarMassGrams { get; }

    /// <summary>Gets the calcium carbonate equivalent in percent; above 100 for compounds lighter than calcium
    /// carbonate.</summary>
    /// <remarks>CCE = 100 x n x M(CaCO3) / M, with n the carbonate equivalents per molecule; 0 for gypsum and Epsom salt
    /// (LIME-S9).</remarks>
    public double CcePercent => LimeStrength.EquivalentPercent(baseUnits, Calcite.MolarMassGrams, MolarMassGrams);

    /// <summary>Gets the share of calcium.</summary>
    public Fraction Calcium => ShareOf("Ca");

    /// <summary>Gets the share of magnesium.</summary>
    public Fraction Magnesium => ShareOf("Mg");

    /// <summary>Gets the share of sulfur.</summary>
    public Fraction Sulfur => ShareOf("S");

    /// <summary>Finds a compound, checked or not.</summary>
    /// <param name="id">Id.</param>
    /// <returns>The compound.</returns>
    /// <exception cref="KeyNotFoundException">No compound has this id; the message lists all.</exception>
    public static LimingCompound Find(string id) => Catalog.Find(id);

    /// <summary>Looks for a compound, checked or not.</summary>
    /// <param name="id">Id; may be null.</param>
    /// <param name="entry">The compound, when there is one.</param>
    /// <param name="problem">What is wrong, with a list of all ids, when there is none; else empty.</param>
    /// <returns>True when there is one.</returns>
    internal static bool TryFind(string? id, [NotNullWhen(true)] out LimingCompound? entry, out string problem) =>
        Catalog.TryFind(id, out entry, out problem);

    /// <summary>Calcium carbonate equivalent of a limestone from its elements, taking both as carbonates.</summary>
    /// <param name="calcium">Share of calcium.</param>
    /// <param name="magnesium">Share of magnesium.</param>
    /// <returns>Calcium carbonate equivalent in percent.</returns>
    /// <exception cref="ArgumentException">More of both than their oxides, the lightest of all limes, hold together.</exception>
    /// <remarks>CCE = %Ca x M(CaCO3)/M(Ca) + %Mg x M(CaCO3)/M(Mg), that is 2.497 x %Ca + 4.118 x %Mg (MASS-IUPAC).
    /// Calcium in gypsum must not be counted in.</remarks>
    public static double CcePercentFromElements(Fraction calcium, Fraction magnesium)
    {
        double oxides =
            (calcium.Percent * AtomicMasses.QuicklimePerCalcium) + (magnesium.Percent * AtomicMasses.MagnesiaPerMagnesium);
        if (Tolerance.IsAbove(oxides, 100))
        {
            throw new ArgumentException(
                $"{Amounts.Print(calcium, 1)} calcium and {Amounts.Print(magnesium, 1)} magnesium are "
                    + $"{Amounts.Print(oxides, 1)} % of the mass even as burnt lime: no material holds so much.",
                nameof(magnesium)
            );
        }

        var carbonate = Calcite;
        return (calcium.Percent * carbonate.MolarMassGrams / AtomicMasses.Of("Ca"))
            + (magnesium.Percent * carbonate.MolarMassGrams / AtomicMasses.Of("Mg"));
    }

    /// <summary>The name and formula.</summary>
    /// <returns>Text such as <c>calcium carbonate, CaCO3</c>.</returns>
    public override string ToString() => $"{Name}, {Formula}";

    private Fraction ShareOf(string symbol) =>
        Fraction.FromValue(atoms.GetValueOrDefault(symbol) * AtomicMasses.Of(symbol) / MolarMassGrams);
}
