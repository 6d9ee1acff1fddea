using PlotAgronomy.Reference;

namespace PlotAgronomy.Fertilizers;

/// <summary>Turns a mass stated in one chemical form into another: P into P2O5, KCl into K2O, CaO into Ca.</summary>
/// <remarks>The exact factor comes from atomic masses (source MASS-IUPAC). The inverse is always one over the factor, so a
/// conversion there and back returns the same number; rounded handbook factors do not promise that.</remarks>
public static class ChemicalConversion
{
    private static readonly Lazy<IReadOnlyDictionary<(ChemicalForm From, ChemicalForm To, Source Source), double>> Published =
        Table.Keyed(
            "Fertilizers/Data/published-factors.csv",
            r => (r.Choice<ChemicalForm>("from"), r.Choice<ChemicalForm>("to"), r.Source()),
            r => r.Number("factor")
        );

    /// <summary>Mass of one form that holds the same nutrient as one unit of mass of another.</summary>
    /// <param name="from">Form the mass is stated in.</param>
    /// <param name="to">Form wanted; shares an element other than oxygen and hydrogen with <paramref name="from"/>.</param>
    /// <returns>The factor, a pure number above 0.</returns>
    /// <exception cref="ArgumentException">The two forms have no nutrient element in common.</exception>
    /// <remarks>factor = (molar mass of to / atoms of the element in it) / (molar mass of from / atoms in it).</remarks>
    public static double ExactFactor(ChemicalForm from, ChemicalForm to)
    {
        Guard.Defined(from);
        Guard.Defined(to);
        var (fromAtoms, toAtoms) = (
            ChemicalFormula.Atoms(ChemicalFormula.Of(from)),
            ChemicalFormula.Atoms(ChemicalFormula.Of(to))
        );
        string element = SharedElement(fromAtoms, toAtoms)
            ?? throw new ArgumentException(
                $"{FertilizerWords.Forms[from]} and {FertilizerWords.Forms[to]} have no nutrient element in common.",
                nameof(to)
            );
        return ChemicalFormula.MolarMass(to) / toAtoms[element] / (ChemicalFormula.MolarMass(from) / fromAtoms[element]);
    }

    /// <summary>The rounded factor a publication prints, for reproducing its examples.</summary>
    /// <param name="from">Form the mass is stated in.</param>
    /// <param name="to">Form wanted.</param>
    /// <param name="source">Publication, found in <see cref="Source"/>.</param>
    /// <returns>The printed factor.</returns>
    /// <exception cref="ArgumentException">This publication prints no factor for these forms.</exception>
    public static double PublishedFactor(ChemicalForm from, ChemicalForm to, Source source)
    {
        Guard.Defined(from);
        Guard.Defined(to);
        ArgumentNullException.ThrowIfNull(source);
        return Published.Value.TryGetValue((from, to, source), out double factor)
            ? factor
            : throw new ArgumentException(
                $"{source.Id} prints no factor from {FertilizerWords.Forms[from]} to {FertilizerWords.Forms[to]}.",
                nameof(source)
            );
    }

    /// <summary>The element that carries the nutrient: the one both share, oxygen and hydrogen (and carbon) last.</summary>
    private static string? SharedElement(Dictionary<string, int> from, Dictionary<string, int> to) =>
        from
            .Keys.Where(to.ContainsKey)
            .Where(e => e is not ("O" or "H" or "C"))
            .OrderBy(e => e, StringComparer.Ordinal)
            .FirstOrDefault();
}
