using System.Collections.Immutable;
using System.Globalization;
using System.Runtime.InteropServices;

namespace PlotAgronomy.Liming;

/// <summary>How much of a material passes each US standard sieve. A higher mesh number is a finer sieve.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class SieveAnalysis
{
    private readonly ImmutableArray<(int Mesh, Fraction Passing)> passing;

    private SieveAnalysis(ImmutableArray<(int Mesh, Fraction Passing)> passing) => this.passing = passing;

    /// <summary>Gets the sieves, coarse to fine.</summary>
    internal ImmutableArray<int> Meshes => [.. passing.Select(p => p.Mesh)];

    internal ImmutableArray<(int Mesh, Fraction Passing)> Passing => passing;

    /// <summary>Creates a sieve analysis.</summary>
    /// <param name="passing">Mesh number and the share passing it; at least one; a finer sieve never passes more.</param>
    /// <returns>The analysis.</returns>
    /// <exception cref="ArgumentException">No sieve, a sieve twice, or a finer sieve that passes more than a coarser
    /// one.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A mesh number below 1.</exception>
    public static SieveAnalysis FromFractions(params ReadOnlySpan<(int Mesh, Fraction Passing)> passing)
    {
        if (passing.IsEmpty)
        {
            throw new ArgumentException("Must hold at least one sieve.", nameof(passing));
        }

        var sorted = passing.ToArray();
        foreach (var (mesh, _) in sorted)
        {
            Guard.AtLeast(mesh, 1, "mesh");
        }

        Array.Sort(sorted, (one, other) => one.Mesh.CompareTo(other.Mesh));
        for (int i = 1; i < sorted.Length; i++)
        {
            var (coarse, fine) = (sorted[i - 1], sorted[i]);
            if (fine.Mesh == coarse.Mesh)
            {
                throw new ArgumentException(
                    string.Create(CultureInfo.InvariantCulture, $"The {fine.Mesh} mesh sieve stands twice."),
                    nameof(passing)
                );
            }

            if (fine.Passing > coarse.Passing)
            {
                throw new ArgumentException(
                    string.Create(
                        CultureInfo.InvariantCulture,
                        $"More passes the {fine.Mesh} mesh sieve ({fine.Passing}) than the coarser {coarse.Mesh} mesh sieve "
                            + $"({coarse.Passing})."
                    ),
                    nameof(passing)
                );
            }
        }

        return new SieveAnalysis(ImmutableCollectionsMarshal.AsImmutableArray(sorted));
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
                $"The sieve analysis does not tell how much passes {mesh} mesh; it has {string.Join(", ", Meshes)} mesh. "
                    + $"Ask the dealer."
            ),
            nameof(mesh)
        );

    /// <summary>Invariant text such as <c>98 % through 8 mesh, 55 % through 60 mesh</c>.</summary>
    /// <returns>The text.</returns>
    public override string ToString() =>
        string.Join(", ", passing.Select(p => string.Create(CultureInfo.InvariantCulture, $"{p.Passing} through {p.Mesh} mesh")));

    private Fraction? TryFind(int mesh)
    {
        bool nothingPasses = false;
        foreach (var (other, known) in passing)
        {
            if (other == mesh)
            {
                return known;
            }

            if (other > mesh && known == Fraction.One)
            {
                return Fraction.One;
            }

            nothingPasses |= other < mesh && known == Fraction.Zero;
        }

        return nothingPasses ? Fraction.Zero : null;
    }
}
