using System.Runtime.CompilerServices;
using PlotAgronomy.Reference;
using PlotAgronomy.Seeds;

namespace PlotAgronomy.Columns;

/// <summary>The live seeds that rates of pure live seed lay on a square foot, a row for each rate.</summary>
/// <remarks>A row's density is that of <see cref="SeedDensity.FromRate"/>, bit for bit; nothing is rounded.</remarks>
public static class SeedDensityColumn
{
    private const ulong Impossible = 1;
    private const ulong Missing = 2;

    private static readonly Lazy<RowFindings> LazyRowFindings = new(() =>
        RowFindings.InOrder(
            FindingCatalog.Create(ColumnCodes.ValueImpossible, ("limits", "a rate from 0, seeds in a pound above 0")),
            FindingCatalog.Create(ColumnCodes.ValueMissing, ("what", "its rate or the seeds in a pound"))
        )
    );

    /// <summary>Gets what the flags of a row mean.</summary>
    public static RowFindings RowFindings => LazyRowFindings.Value;

    /// <summary>The density of every row.</summary>
    /// <param name="livePoundsPerAcre">Rate of pure live seed in lb/ac.</param>
    /// <param name="seedsPerPound">Seeds in a pound.</param>
    /// <param name="seedsPerSquareFoot">Takes the live seeds on a square foot.</param>
    /// <param name="status">Takes how far each row was answered.</param>
    /// <param name="flags">Takes why not (<see cref="RowFindings"/>).</param>
    /// <exception cref="ArgumentException">Columns of unlike length, or a result that lies over an input.</exception>
    public static void Densities(
        ReadOnlySpan<double> livePoundsPerAcre,
        ReadOnlySpan<double> seedsPerPound,
        Span<double> seedsPerSquareFoot,
        Span<RowStatus> status,
        Span<ulong> flags
    )
    {
        int rows = livePoundsPerAcre.Length;
        ColumnSpans.SameLength(rows, seedsPerPound.Length, nameof(seedsPerPound));
        ColumnSpans.Written(rows, seedsPerSquareFoot.Length, status.Length, flags.Length, nameof(seedsPerSquareFoot));
        ColumnSpans.Apart(livePoundsPerAcre, seedsPerSquareFoot, nameof(seedsPerSquareFoot));
        ColumnSpans.Apart(seedsPerPound, seedsPerSquareFoot, nameof(seedsPerSquareFoot));
        var sum = new Sum
        {
            Live = livePoundsPerAcre,
            SeedsPerPound = seedsPerPound,
        };
        RowSums.Fill(sum, seedsPerSquareFoot, status, flags);
    }

    private readonly ref struct Sum : IRowSum
    {
        internal required ReadOnlySpan<double> Live { get; init; }

        internal required ReadOnlySpan<double> SeedsPerPound { get; init; }

        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T Several<T>(int row, out T holds, out T flags)
            where T : unmanaged, ILanes<T>
        {
            var rate = RowSums.At<T>(Live, row);
            var count = RowSums.At<T>(SeedsPerPound, row);
            var density = SeedMath.SeedsPerSquareFoot(rate, count);
            holds = (rate >= T.Of(0)) & (count > T.Of(0)) & (density <= T.Of(double.MaxValue));
            flags = T.OfBits(0);
            return density;
        }

        public (double Answer, RowStatus Status, ulong Flags) One(int row)
        {
            double rate = Live[row];
            double count = SeedsPerPound[row];
            return RowValue.IsOutside(rate, 0, double.MaxValue) || RowValue.IsOutside(count, double.Epsilon, double.MaxValue)
                    ? (double.NaN, RowStatus.Implausible, Impossible)
                : double.IsNaN(rate + count) ? (double.NaN, RowStatus.Missing, Missing)
                : RowValue.Answer(SeedMath.SeedsPerSquareFoot(rate, count), 0, Impossible);
        }
    }
}
