using System.Runtime.CompilerServices;
using PlotAgronomy.Reference;
using PlotAgronomy.Spreading;

namespace PlotAgronomy.Columns;

/// <summary>The rates that spreaders put on the ground, a row for each run: flow, speed and swath.</summary>
/// <remarks>A row's rate is that of <see cref="SpreaderSetting.FromFlow"/>, bit for bit; nothing is rounded. A pace, swath, flow
/// or rate that no spreader has is warned of there and refused here.</remarks>
public static class SpreaderColumn
{
    private const ulong Impossible = 1;
    private const ulong Missing = 2;
    private const ulong Unlikely = 4;

    private static readonly Lazy<Limits> LazyLimits = new(() => new());

    /// <summary>Gets what the flags of a row mean.</summary>
    public static RowFindings RowFindings => LazyLimits.Value.RowFindings;

    /// <summary>The rate of every row.</summary>
    /// <param name="poundsPerMinute">Flow leaving the hopper in lb/min.</param>
    /// <param name="milesPerHour">Ground speed in mph.</param>
    /// <param name="swathFeet">Effective swath, the spacing of the passes, in ft.</param>
    /// <param name="rates">Takes the rates in lb/ac.</param>
    /// <param name="status">Takes how far each row was answered.</param>
    /// <param name="flags">Takes why not (<see cref="RowFindings"/>).</param>
    /// <exception cref="ArgumentException">Columns of unlike length, or a result that lies over an input.</exception>
    public static void Rates(
        ReadOnlySpan<double> poundsPerMinute,
        ReadOnlySpan<double> milesPerHour,
        ReadOnlySpan<double> swathFeet,
        Span<double> rates,
        Span<RowStatus> status,
        Span<ulong> flags
    )
    {
        int rows = poundsPerMinute.Length;
        ColumnSpans.SameLength(rows, milesPerHour.Length, nameof(milesPerHour));
        ColumnSpans.SameLength(rows, swathFeet.Length, nameof(swathFeet));
        ColumnSpans.Written(rows, rates.Length, status.Length, flags.Length, nameof(rates));
        ColumnSpans.Apart(poundsPerMinute, rates, nameof(rates));
        ColumnSpans.Apart(milesPerHour, rates, nameof(rates));
        ColumnSpans.Apart(swathFeet, rates, nameof(rates));
        var sum = new Sum
        {
            Limits = LazyLimits.Value,
            PoundsPerMinute = poundsPerMinute,
            MilesPerHour = milesPerHour,
            SwathFeet = swathFeet,
        };
        RowSums.Fill(sum, rates, status, flags);
    }

    /// <summary>Between what the figures of a spreader lie, read once.</summary>
    private sealed class Limits
    {
        private readonly PlausibleSpan flow = SpreadingPlausibility.Flow;
        private readonly PlausibleSpan speed = SpreadingPlausibility.Pace;
        private readonly PlausibleSpan swath = SpreadingPlausibility.Swath;
        private readonly PlausibleSpan rate = SpreadingPlausibility.Rate;

        internal Limits() =>
            RowFindings = RowFindings.InOrder(
                FindingCatalog.Create(ColumnCodes.ValueImpossible, ("limits", "flow, speed and swath lie above 0")),
                FindingCatalog.Create(ColumnCodes.ValueMissing, ("what", "its flow, speed or swath")),
                FindingCatalog.Create(
                    SpreadingCodes.Implausible,
                    ("what", "flow, pace, swath or rate"),
                    ("value", "the row"),
                    ("limits", $"{flow.InWords}, {speed.InWords}, {swath.InWords} or {rate.InWords}")
                )
            );

        internal RowFindings RowFindings { get; }

        /// <summary>A mask of the runs that a spreader can make.</summary>
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        internal T Hold<T>(T minute, T pace, T width, T acre)
            where T : unmanaged, ILanes<T> =>
            (minute > T.Of(0)) & flow.Holds(minute) & speed.Holds(pace) & swath.Holds(width) & rate.Holds(acre);
    }

    private readonly ref struct Sum : IRowSum
    {
        internal required Limits Limits { get; init; }

        internal required ReadOnlySpan<double> PoundsPerMinute { get; init; }

        internal required ReadOnlySpan<double> MilesPerHour { get; init; }

        internal required ReadOnlySpan<double> SwathFeet { get; init; }

        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T Several<T>(int row, out T holds, out T flags)
            where T : unmanaged, ILanes<T>
        {
            var minute = RowSums.At<T>(PoundsPerMinute, row);
            var pace = RowSums.At<T>(MilesPerHour, row);
            var width = RowSums.At<T>(SwathFeet, row);
            var acre = SpreaderMath.PoundsPerAcre(minute, pace, width);
            holds = Limits.Hold(minute, pace, width, acre);
            flags = T.OfBits(0);
            return acre;
        }

        public (double Answer, RowStatus Status, ulong Flags) One(int row)
        {
            var (minute, pace, width) = (PoundsPerMinute[row], MilesPerHour[row], SwathFeet[row]);
            double acre = SpreaderMath.PoundsPerAcre(minute, pace, width);
            bool cannotBe =
                RowValue.IsOutside(minute, double.Epsilon, double.MaxValue)
                | RowValue.IsOutside(pace, double.Epsilon, double.MaxValue)
                | RowValue.IsOutside(width, double.Epsilon, double.MaxValue);
            return cannotBe ? (double.NaN, RowStatus.Implausible, Impossible)
                : double.IsNaN(minute + pace + width) ? (double.NaN, RowStatus.Missing, Missing)
                : Limits.Hold<OneLane>(new(minute), new(pace), new(width), new(acre)).Bits == 0
                    ? (double.NaN, RowStatus.Implausible, Unlikely)
                : (acre, RowStatus.Answered, 0);
        }
    }
}
