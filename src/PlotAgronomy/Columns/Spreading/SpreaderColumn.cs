using System.Numerics;
using System.Runtime.Intrinsics;
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
    private const int AtOnce = 4;

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
        LazyLimits.Value.Answer(poundsPerMinute, milesPerHour, swathFeet, rates, status, flags);
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

        /// <summary>Four rows at once; those that are not plausible are looked at one by one.</summary>
        internal void Answer(
            ReadOnlySpan<double> poundsPerMinute,
            ReadOnlySpan<double> milesPerHour,
            ReadOnlySpan<double> swathFeet,
            Span<double> rates,
            Span<RowStatus> status,
            Span<ulong> flags
        )
        {
            int row = 0;
            for (; row <= rates.Length - AtOnce; row += AtOnce)
            {
                var minute = Vector256.Create(poundsPerMinute[row..]);
                var pace = Vector256.Create(milesPerHour[row..]);
                var width = Vector256.Create(swathFeet[row..]);
                var acre = SpreaderMath.PoundsPerAcre(minute, pace, width);
                var held = Holds(minute, pace, width, acre);
                Vector256.ConditionalSelect(held, acre, Vector256.Create(double.NaN)).CopyTo(rates[row..]);
                Vector256<ulong>.Zero.CopyTo(flags[row..]);
                RowStatuses.Write(Vector256<ulong>.Zero, status[row..]);
                for (uint left = ~held.ExtractMostSignificantBits() & 0xF; left != 0; left &= left - 1)
                {
                    int i = row + BitOperations.TrailingZeroCount(left);
                    (status[i], flags[i]) = Refuse(poundsPerMinute[i], milesPerHour[i], swathFeet[i]);
                }
            }

            if (row < rates.Length)
            {
                Last(poundsPerMinute[row..], milesPerHour[row..], swathFeet[row..], rates[row..], status[row..], flags[row..]);
            }
        }

        private Vector256<double> Holds(
            Vector256<double> minute,
            Vector256<double> pace,
            Vector256<double> width,
            Vector256<double> acre
        ) =>
            Vector256.GreaterThan(minute, Vector256<double>.Zero)
            & flow.Holds(minute)
            & speed.Holds(pace)
            & swath.Holds(width)
            & rate.Holds(acre);

        /// <summary>Fewer than four rows, filled up with rows of which nothing is known.</summary>
        private void Last(
            ReadOnlySpan<double> poundsPerMinute,
            ReadOnlySpan<double> milesPerHour,
            ReadOnlySpan<double> swathFeet,
            Span<double> rates,
            Span<RowStatus> status,
            Span<ulong> flags
        )
        {
            Span<double> given = stackalloc double[3 * AtOnce];
            Span<double> found = stackalloc double[AtOnce];
            Span<RowStatus> how = stackalloc RowStatus[AtOnce];
            Span<ulong> why = stackalloc ulong[AtOnce];
            given.Fill(double.NaN);
            poundsPerMinute.CopyTo(given);
            milesPerHour.CopyTo(given[AtOnce..]);
            swathFeet.CopyTo(given[(2 * AtOnce)..]);
            Answer(given[..AtOnce], given[AtOnce..(2 * AtOnce)], given[(2 * AtOnce)..], found, how, why);
            found[..rates.Length].CopyTo(rates);
            how[..rates.Length].CopyTo(status);
            why[..rates.Length].CopyTo(flags);
        }

        private static (RowStatus Status, ulong Flags) Refuse(
            double poundsPerMinute,
            double milesPerHour,
            double swathFeet
        )
        {
            bool cannotBe =
                RowValue.IsOutside(poundsPerMinute, double.Epsilon, double.MaxValue)
                | RowValue.IsOutside(milesPerHour, double.Epsilon, double.MaxValue)
                | RowValue.IsOutside(swathFeet, double.Epsilon, double.MaxValue);
            return cannotBe ? (RowStatus.Implausible, Impossible)
                : double.IsNaN(poundsPerMinute + milesPerHour + swathFeet) ? (RowStatus.Missing, Missing)
                : (RowStatus.Implausible, Unlikely);
        }
    }
}
