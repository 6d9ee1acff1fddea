using System.Runtime.CompilerServices;
using PlotAgronomy.Reference;
using PlotAgronomy.Seeds;

namespace PlotAgronomy.Columns;

/// <summary>The bulk rates that deliver rates of pure live seed, a row for each lot.</summary>
/// <remarks>A row's rate is that of <see cref="PureLiveSeed.BulkRate"/> for an analysis of these percentages, bit for bit;
/// nothing is rounded. What that call remarks on coating, seeds tested and the kind is not asked here.</remarks>
[JsonConverter(typeof(NotForJson))]
public sealed class BulkSeedColumn
{
    private const ulong Impossible = 1;
    private const ulong Missing = 2;
    private const ulong NothingAlive = 4;
    private const ulong LowPureLive = 8;
    private const double WholePercent = 100;

    private readonly double hardCredit;
    private readonly double dormantCredit;
    private readonly double mostOfWhole;
    private readonly double lowPureLive;

    private BulkSeedColumn(ViabilityRule rule)
    {
        Rule = rule;
        (hardCredit, dormantCredit) = (rule.HardCredit, rule.DormantCredit);
        mostOfWhole = SeedAnalysis.MostOfWhole;
        lowPureLive = SeedConstants.All["pure-live-seed-low"];
        string low = Amounts.Print(Fraction.FromValue(lowPureLive), 1);
        RowFindings = RowFindings.InOrder(
            FindingCatalog.Create(
                ColumnCodes.ValueImpossible,
                ("limits", "a rate from 0, purity above 0 and at most 100 %, germination + hard + dormant seed at most 100 %")
            ),
            FindingCatalog.Create(ColumnCodes.ValueMissing, ("what", "its rate, purity, germination, hard or dormant seed")),
            FindingCatalog.Create(ColumnCodes.NothingAlive, ("rule", rule.Name)),
            FindingCatalog.Create(SeedCodes.LowPureLive, ("part", $"a part, below {low},"))
        );
    }

    /// <summary>Gets the rule of what counts as alive.</summary>
    public ViabilityRule Rule { get; }

    /// <summary>Gets what the flags of a row mean.</summary>
    public RowFindings RowFindings { get; }

    /// <summary>A column by a rule of what counts as alive.</summary>
    /// <param name="rule">Rule by which germination, hard and dormant seed count.</param>
    /// <returns>The column.</returns>
    /// <exception cref="ArgumentException">A rule that rests on one lot's tetrazolium test.</exception>
    public static BulkSeedColumn ByRule(ViabilityRule rule)
    {
        ArgumentNullException.ThrowIfNull(rule);
        return rule.Tested is null
            ? new(rule)
            : throw new ArgumentException("Must be a rule for all lots, not the tetrazolium test of one.", nameof(rule));
    }

    /// <summary>The bulk rate of every row.</summary>
    /// <param name="livePoundsPerAcre">Rate of pure live seed in lb/ac.</param>
    /// <param name="purityPercent">Pure seed in percent of the bag's weight.</param>
    /// <param name="germinationPercent">Germination in percent of the pure seeds, hard seed not counted in.</param>
    /// <param name="hardPercent">Hard seed in percent; empty where no lot has any.</param>
    /// <param name="dormantPercent">Dormant seed in percent; empty where no lot has any.</param>
    /// <param name="rates">Takes the bulk rates in lb/ac.</param>
    /// <param name="status">Takes how far each row was answered.</param>
    /// <param name="flags">Takes why, and what to look at (<see cref="RowFindings"/>).</param>
    /// <exception cref="ArgumentException">Columns of unlike length, or a result that lies over an input.</exception>
    public void Rates(
        ReadOnlySpan<double> livePoundsPerAcre,
        ReadOnlySpan<double> purityPercent,
        ReadOnlySpan<double> germinationPercent,
        ReadOnlySpan<double> hardPercent,
        ReadOnlySpan<double> dormantPercent,
        Span<double> rates,
        Span<RowStatus> status,
        Span<ulong> flags
    )
    {
        int rows = livePoundsPerAcre.Length;
        ColumnSpans.SameLength(rows, purityPercent.Length, nameof(purityPercent));
        ColumnSpans.SameLength(rows, germinationPercent.Length, nameof(germinationPercent));
        ColumnSpans.SameLengthOrNone(rows, hardPercent.Length, nameof(hardPercent));
        ColumnSpans.SameLengthOrNone(rows, dormantPercent.Length, nameof(dormantPercent));
        ColumnSpans.Written(rows, rates.Length, status.Length, flags.Length, nameof(rates));
        ColumnSpans.Apart(livePoundsPerAcre, rates, nameof(rates));
        ColumnSpans.Apart(purityPercent, rates, nameof(rates));
        ColumnSpans.Apart(germinationPercent, rates, nameof(rates));
        ColumnSpans.Apart(hardPercent, rates, nameof(rates));
        ColumnSpans.Apart(dormantPercent, rates, nameof(rates));
        var sum = new Sum
        {
            Column = this,
            Live = livePoundsPerAcre,
            PurityPercent = purityPercent,
            GerminationPercent = germinationPercent,
            HardPercent = hardPercent,
            DormantPercent = dormantPercent,
        };
        RowSums.Fill(sum, rates, status, flags);
    }

    /// <summary>The rule.</summary>
    /// <returns>The name of the rule.</returns>
    public override string ToString() => Rule.Name;

    private (double Rate, RowStatus Status, ulong Flags) Answer(
        double live,
        double purityPercent,
        double germinationPercent,
        double hardPercent,
        double dormantPercent
    )
    {
        double germination = germinationPercent / WholePercent;
        double hard = hardPercent / WholePercent;
        double dormant = dormantPercent / WholePercent;
        double part = SeedMath.PureLiveFraction(
            purityPercent / WholePercent,
            SeedMath.ViableFraction(germination, hard, dormant, hardCredit, dormantCredit)
        );
        double bulk = SeedMath.BulkPoundsPerAcre(live, part);
        bool cannotBe =
            RowValue.IsOutside(live, 0, double.MaxValue)
            | RowValue.IsOutside(purityPercent, double.Epsilon, WholePercent)
            | RowValue.IsOutside(germinationPercent, 0, WholePercent)
            | RowValue.IsOutside(hardPercent, 0, WholePercent)
            | RowValue.IsOutside(dormantPercent, 0, WholePercent)
            | germination + hard + dormant > mostOfWhole;
        return cannotBe ? (double.NaN, RowStatus.Implausible, Impossible)
            : double.IsNaN(live + part) ? (double.NaN, RowStatus.Missing, Missing)
            : part == 0 ? (double.NaN, RowStatus.OutsideDomain, NothingAlive)
            : live == 0 ? (0, RowStatus.NoneNeeded, 0)
            : RowValue.Answer(bulk, part < lowPureLive ? LowPureLive : 0, Impossible);
    }

    private readonly ref struct Sum : IRowSum
    {
        internal required BulkSeedColumn Column { get; init; }

        internal required ReadOnlySpan<double> Live { get; init; }

        internal required ReadOnlySpan<double> PurityPercent { get; init; }

        internal required ReadOnlySpan<double> GerminationPercent { get; init; }

        internal required ReadOnlySpan<double> HardPercent { get; init; }

        internal required ReadOnlySpan<double> DormantPercent { get; init; }

        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T Several<T>(int row, out T holds, out T flags)
            where T : unmanaged, ILanes<T>
        {
            var (zero, whole, most) = (T.Of(0), T.Of(WholePercent), T.Of(double.MaxValue));
            var rate = RowSums.At<T>(Live, row);
            var pure = RowSums.At<T>(PurityPercent, row);
            var germination = RowSums.At<T>(GerminationPercent, row);
            var hard = RowSums.At<T>(HardPercent, row);
            var dormant = RowSums.At<T>(DormantPercent, row);
            holds =
                (rate > zero)
                & (pure > zero)
                & (pure <= whole)
                & (germination >= zero)
                & (germination <= whole)
                & (hard >= zero)
                & (hard <= whole)
                & (dormant >= zero)
                & (dormant <= whole);
            (germination, hard, dormant) = (germination / whole, hard / whole, dormant / whole);
            holds &= germination + hard + dormant <= T.Of(Column.mostOfWhole);
            var viable = SeedMath.ViableFraction(germination, hard, dormant, Column.hardCredit, Column.dormantCredit);
            var part = SeedMath.PureLiveFraction(pure / whole, viable);
            var bulk = SeedMath.BulkPoundsPerAcre(rate, part);
            holds &= (part > zero) & (bulk <= most);
            flags = (part < T.Of(Column.lowPureLive)) & T.OfBits(LowPureLive);
            return bulk;
        }

        public (double Answer, RowStatus Status, ulong Flags) One(int row) =>
            Column.Answer(
                Live[row],
                PurityPercent[row],
                GerminationPercent[row],
                HardPercent.IsEmpty ? 0 : HardPercent[row],
                DormantPercent.IsEmpty ? 0 : DormantPercent[row]
            );
    }
}
