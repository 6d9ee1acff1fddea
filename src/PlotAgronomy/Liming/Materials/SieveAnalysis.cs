using System.Collections.Immutable;
using System.Globalization;

namespace PlotAgronomy.Liming;

/// <summary>How much of a material passes each US standard sieve. A higher mesh number is a finer sieve.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class SieveAnalysis
{
    private readonly ImmutableSortedDictionary<int, Fraction> passing;

    private SieveAnalysis(ImmutableSortedDictionary<int, Fraction> passing) => this.passing = passing;

    /// <summary>Gets the sieves, coarse to fine.</summary>
    internal ImmutableArray<int> Meshes => [.. passing.Keys];

    internal ImmutableArray<(int Mesh, Fraction Passing)> Passing => [.. passing.Select(p => (p.Key, p.Value))];

    /// <summary>Creates a sieve analysis.</summary>
    /// <param name="passing">Mesh number and the share passing it; at least one; a finer sieve never passes more.</param>
    /// <returns>The analysis.</returns>
    /// <exception cref="ArgumentException">No sieve, a sieve twice, or a finer sieve that passes more than a coarser
    /// one.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A mesh number below 1.</exception>
    public static SieveAnalysis FromFractions(params ReadOnlySpan<(int Mesh, Fraction Passing)> passing)
    {
        var sorted = ImmutableSortedDictionary.CreateBuilder<int, Fraction>();
        foreach (var (mesh, share) in passing)
        {
            if (!sorted.TryAdd(Guard.AtLeast(mesh, 1, "mesh"), share))
            {
                throw new ArgumentException(
                    string.Create(CultureInfo.InvariantCulture, $"The {mesh} mesh sieve stands twice."),
                    nameof(passing)
                );
            }
        }

        if (sorted.Count == 0)
        {
            throw new ArgumentException("Must hold at least one sieve.", nameof(passing));
        }

        foreach (var (coarse, fine) in sorted.Zip(sorted.Skip(1)))
        {
            if (fine.Value > coarse.Value)
            {
                throw new ArgumentException(
                    string.Create(
                        CultureInfo.InvariantCulture,
                        $"More passes the {fine.Key} mesh sieve ({fine.Value}) than the coarser {coarse.Key} mesh sieve "
                            + $"({coarse.Value})."
                    ),
                    nameof(passing)
                );
            }
        }

        return new SieveAnalysis(sorted.ToImmutable());
    }

    /// <summary>Creates a sieve analysis from percentages as printed.</summary>
    /// <param name="passingPercent">Mesh number and the percent passing it.</param>
    /// <returns>The analysis.</returns>
    /// <inheritdoc cref="FromFractions" path="/exception"/>
    public static SieveAnalysis FromPercent(params ReadOnlySpan<(int Mesh, double Percent)> passingPercent)
    {
        var shares = new (int, Fraction)[passingPercent.Length];
        for (int i = 0; i < shares.Length; i++)
        {
            shares[i] = (passingPercent[i].Mesh, Fraction.FromPercent(passingPercent[i].Percent));
        }

        return FromFractions(shares);
    }

    /// <summary>Says whether the share passing a sieve is known.</summary>
    /// <param name="mesh">Mesh number.</param>
    /// <returns>True when it was measured, or follows from a finer sieve that passes everything or a coarser one that passes
    /// nothing.</returns>
    public bool Knows(int mesh) => TryFind(mesh) is not null;

    /// <summary>Share passing a sieve.</summary>
    /// <param name="mesh">Mesh number.</param>
    /// <returns>The share.</returns>
    /// <exception cref="ArgumentException">The analysis does not tell; nothing is interpolated.</exception>
    public Fraction SharePassing(int mesh) =>
        TryFind(mesh)
        ?? throw new ArgumentException(
            string.Create(
                CultureInfo.InvariantCulture,
                $"The sieve analysis does not tell how much passes {mesh} mesh; it has {string.Join(", ", passing.Keys)} mesh. "
                    + $"Ask the dealer."
            ),
            nameof(mesh)
        );

    /// <summary>Invariant text such as <c>98 % through 8 mesh, 55 % through 60 mesh</c>.</summary>
    /// <returns>The text.</returns>
    public override string ToString() =>
        string.Join(", ", passing.Select(p => string.Create(CultureInfo.InvariantCulture, $"{p.Value} through {p.Key} mesh")));

    private Fraction? TryFind(int mesh)
    {
        if (passing.TryGetValue(mesh, out var share))
        {
            return share;
        }

        bool nothingPasses = false;
        foreach (var (other, known) in passing)
        {
            if (other > mesh && known == Fraction.One)
            {
                return Fraction.One;
            }

            nothingPasses |= other < mesh && known == Fraction.Zero;
        }

        return nothingPasses ? Fraction.Zero : null;
    }
}
