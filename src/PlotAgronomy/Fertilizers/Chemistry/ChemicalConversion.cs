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
        var (stated, wanted) = (ChemicalFormula.Of(from), ChemicalFormula.Of(to));
        string element = SharedElement(stated.Atoms, wanted.Atoms)
            ?? throw new ArgumentException(
                $"{FertilizerWords.Forms[from]} and {FertilizerWords.Forms[to]} have no nutrient element in common.",
                nameof(to)
            );
        return wanted.MolarMass / wanted.Atoms[element] / (stated.MolarMass / stated.Atoms[element]);
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

    /// <summary>The element that carries the nutrient: the one both share, the first of several; oxygen, hydrogen and carbon
    /// carry none.</summary>
    private static string? SharedElement(IReadOnlyDictionary<string, int> from, IReadOnlyDictionary<string, int> to)
    {
        string? shared = null;
        foreach (string element in from.Keys)
        {
            bool carries = element is not ("O" or "H" or "C") && to.ContainsKey(element);
            shared = carries && (shared is null || string.CompareOrdinal(element, shared) < 0) ? element : shared;
        }

        return shared;
    }
}
