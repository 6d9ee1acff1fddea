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
        ColumnSpans.SameLength(rows, rates.Length, nameof(rates));
        ColumnSpans.SameLength(rows, status.Length, nameof(status));
        ColumnSpans.SameLength(rows, flags.Length, nameof(flags));
        ColumnSpans.Apart(poundsPerMinute, rates, nameof(rates));
        ColumnSpans.Apart(milesPerHour, rates, nameof(rates));
        ColumnSpans.Apart(swathFeet, rates, nameof(rates));
        var limits = LazyLimits.Value;
        for (int i = 0; i < rows; i++)
        {
            (rates[i], status[i], flags[i]) = limits.Answer(poundsPerMinute[i], milesPerHour[i], swathFeet[i]);
        }
    }

    /// <summary>Between what the figures of a spreader lie, read once.</summary>
    private sealed class Limits
    {
        private readonly PlausibleSpan flow = SpreadingPlausibility.Flow;
        private readonly PlausibleSpan pace = SpreadingPlausibility.Pace;
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
                    ("limits", $"{flow.InWords}, {pace.InWords}, {swath.InWords} or {rate.InWords}")
                )
            );

        internal RowFindings RowFindings { get; }

        internal (double Rate, RowStatus Status, ulong Flags) Answer(
            double poundsPerMinute,
            double milesPerHour,
            double swathFeet
        )
        {
            double poundsPerAcre = SpreaderMath.PoundsPerAcre(poundsPerMinute, milesPerHour, swathFeet);
            bool isPlausible =
                poundsPerMinute > 0
                && flow.Holds(poundsPerMinute)
                && pace.Holds(milesPerHour)
                && swath.Holds(swathFeet)
                && rate.Holds(poundsPerAcre);
            return isPlausible
                ? (poundsPerAcre, RowStatus.Answered, 0)
                : Refuse(poundsPerMinute, milesPerHour, swathFeet);
        }

        private static (double Rate, RowStatus Status, ulong Flags) Refuse(
            double poundsPerMinute,
            double milesPerHour,
            double swathFeet
        )
        {
            bool cannotBe =
                RowValue.IsOutside(poundsPerMinute, double.Epsilon, double.MaxValue)
                | RowValue.IsOutside(milesPerHour, double.Epsilon, double.MaxValue)
                | RowValue.IsOutside(swathFeet, double.Epsilon, double.MaxValue);
            return cannotBe ? (double.NaN, RowStatus.Implausible, Impossible)
                : double.IsNaN(poundsPerMinute + milesPerHour + swathFeet) ? (double.NaN, RowStatus.Missing, Missing)
                : (double.NaN, RowStatus.Implausible, Unlikely);
        }
    }
}
