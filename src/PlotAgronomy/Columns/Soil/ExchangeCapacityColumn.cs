using System.Runtime.CompilerServices;
using PlotAgronomy.Reference;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Columns;

/// <summary>Exchange capacities by summation with one acidity term, a row for each soil.</summary>
/// <remarks>A row's capacity is that of <see cref="CationBalance.For"/>, bit for bit; nothing is rounded. Two things differ: a
/// row that lacks potassium, magnesium or calcium is not answered, where that call sums what there is and says so; and a water
/// pH and a buffer pH that look swapped or contradict each other are refused.</remarks>
[JsonConverter(typeof(NotForJson))]
public sealed class ExchangeCapacityColumn
{
    private const ulong Impossible = 1;
    private const ulong Missing = 2;
    private const ulong Swapped = 4;
    private const ulong Contradictory = 8;
    private const ulong AcidityMissing = 16;
    private const ulong NoneAboveStart = 32;
    private const ulong CalciumInflated = 64;
    private const ulong OutsideDomain = 128;

    private readonly PhPairRule pair;
    private readonly double perPotassium;
    private readonly double perMagnesium;
    private readonly double perCalcium;
    private readonly double perSodium;
    private readonly double waterPhLimit;
    private readonly double freeLimePh;

    private ExchangeCapacityColumn(AcidityTerm term, SoilBuffer buffer)
    {
        Term = term;
        Buffer = buffer;
        pair = PhPairRule.For(buffer);
        perPotassium = Divisor(term, SoilAnalyte.Potassium);
        perMagnesium = Divisor(term, SoilAnalyte.Magnesium);
        perCalcium = Divisor(term, SoilAnalyte.Calcium);
        perSodium = Divisor(term, SoilAnalyte.Sodium);
        waterPhLimit = term.WaterPhLimit ?? double.PositiveInfinity;
        freeLimePh = SoilConstants.All["free-lime-ph"];
        RowFindings = FindingsOf(term, buffer);
    }

    /// <summary>Gets the acidity term; its divisors turn concentrations into charges.</summary>
    public AcidityTerm Term { get; }

    /// <summary>Gets the buffer that the readings were run in.</summary>
    public SoilBuffer Buffer { get; }

    /// <summary>Gets what the flags of a row mean.</summary>
    public RowFindings RowFindings { get; }

    /// <summary>A column by an acidity term.</summary>
    /// <param name="term">Acidity term, checked or not.</param>
    /// <param name="buffer">Buffer of the readings, one of the term's; null takes the first it names.</param>
    /// <returns>The column.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Unknown buffer.</exception>
    /// <exception cref="ArgumentException">A buffer that the term does not take.</exception>
    public static ExchangeCapacityColumn ByTerm(AcidityTerm term, SoilBuffer? buffer = null)
    {
        ArgumentNullException.ThrowIfNull(term);
        var ran = Guard.Defined(buffer) ?? term.Buffers[0];
        return term.Buffers.Contains(ran)
            ? new(term, ran)
            : throw new ArgumentException(
                $"Must be a buffer that the term takes: {string.Join(", ", term.Buffers.Select(SoilWords.For))}.",
                nameof(buffer)
            );
    }

    /// <summary>The exchange capacity of every row.</summary>
    /// <param name="potassium">Potassium in ppm; in mg/dm3 for a term by volume.</param>
    /// <param name="magnesium">Magnesium in the same unit.</param>
    /// <param name="calcium">Calcium in the same unit.</param>
    /// <param name="sodium">Sodium in the same unit; NaN or empty counts as none, as for a term without sodium.</param>
    /// <param name="bufferPh">Buffer pH.</param>
    /// <param name="waterPh">Water pH; NaN where it is not known.</param>
    /// <param name="capacities">Takes the capacities in meq on the basis of the term, per 100 g or 100 cm3.</param>
    /// <param name="status">Takes how far each row was answered.</param>
    /// <param name="flags">Takes why, and what to look at (<see cref="RowFindings"/>).</param>
    /// <exception cref="ArgumentException">Columns of unlike length, or a result that lies over an input.</exception>
    public void Capacities(
        ReadOnlySpan<double> potassium,
        ReadOnlySpan<double> magnesium,
        ReadOnlySpan<double> calcium,
        ReadOnlySpan<double> sodium,
        ReadOnlySpan<double> bufferPh,
        ReadOnlySpan<double> waterPh,
        Span<double> capacities,
        Span<RowStatus> status,
        Span<ulong> flags
    )
    {
        int rows = potassium.Length;
        ColumnSpans.SameLength(rows, magnesium.Length, nameof(magnesium));
        ColumnSpans.SameLength(rows, calcium.Length, nameof(calcium));
        ColumnSpans.SameLengthOrNone(rows, sodium.Length, nameof(sodium));
        ColumnSpans.SameLength(rows, bufferPh.Length, nameof(bufferPh));
        ColumnSpans.SameLength(rows, waterPh.Length, nameof(waterPh));
        ColumnSpans.Written(rows, capacities.Length, status.Length, flags.Length, nameof(capacities));
        ColumnSpans.Apart(potassium, capacities, nameof(capacities));
        ColumnSpans.Apart(magnesium, capacities, nameof(capacities));
        ColumnSpans.Apart(calcium, capacities, nameof(capacities));
        ColumnSpans.Apart(sodium, capacities, nameof(capacities));
        ColumnSpans.Apart(bufferPh, capacities, nameof(capacities));
        ColumnSpans.Apart(waterPh, capacities, nameof(capacities));
        var sum = new Sum
        {
            Column = this,
            Potassium = potassium,
            Magnesium = magnesium,
            Calcium = calcium,
            Sodium = sodium,
            BufferPh = bufferPh,
            WaterPh = waterPh,
        };
        RowSums.Fill(sum, capacities, status, flags);
    }

    /// <summary>The acidity term.</summary>
    /// <returns>Its title.</returns>
    public override string ToString() => Term.Title;

    private (double Capacity, RowStatus Status, ulong Flags) Answer(
        double potassium,
        double magnesium,
        double calcium,
        double sodium,
        double bufferPh,
        double waterPh
    )
    {
        ulong noted = waterPh > freeLimePh ? CalciumInflated : 0;
        bool cannotBe =
            RowValue.IsOutside(potassium, 0, double.MaxValue)
            | RowValue.IsOutside(magnesium, 0, double.MaxValue)
            | RowValue.IsOutside(calcium, 0, double.MaxValue)
            | RowValue.IsOutside(sodium, 0, double.MaxValue)
            | RowValue.IsOutside(bufferPh, double.Epsilon, PhScale.Highest)
            | RowValue.IsOutside(waterPh, double.Epsilon, PhScale.Highest);
        return cannotBe ? (double.NaN, RowStatus.Implausible, Impossible)
            : pair.LooksSwapped(waterPh, bufferPh) ? (double.NaN, RowStatus.Implausible, Swapped)
            : pair.Contradicts(waterPh, bufferPh) ? (double.NaN, RowStatus.Implausible, Contradictory)
            : double.IsNaN(bufferPh) ? (double.NaN, RowStatus.Missing, AcidityMissing | noted)
            : double.IsNaN(potassium + magnesium + calcium) ? (double.NaN, RowStatus.Missing, Missing | noted)
            : waterPh > waterPhLimit ? (double.NaN, RowStatus.OutsideDomain, OutsideDomain | noted)
            : RowValue.Answer(
                Capacity(potassium, magnesium, calcium, sodium, bufferPh),
                noted | (bufferPh >= Term.StartPh ? NoneAboveStart : 0),
                Impossible
            );
    }

    private double Capacity(double potassium, double magnesium, double calcium, double sodium, double bufferPh)
    {
        double bases =
            CationMath.Charge(potassium, perPotassium)
            + CationMath.Charge(magnesium, perMagnesium)
            + CationMath.Charge(calcium, perCalcium)
            + CationMath.Charge(sodium, perSodium);
        return CationMath.Capacity(
            bases,
            CationMath.AcidityMilliequivalents(bufferPh, Term.StartPh, Term.MilliequivalentsPerPhUnit)
        );
    }

    private readonly ref struct Sum : IRowSum
    {
        internal required ExchangeCapacityColumn Column { get; init; }

        internal required ReadOnlySpan<double> Potassium { get; init; }

        internal required ReadOnlySpan<double> Magnesium { get; init; }

        internal required ReadOnlySpan<double> Calcium { get; init; }

        internal required ReadOnlySpan<double> Sodium { get; init; }

        internal required ReadOnlySpan<double> BufferPh { get; init; }

        internal required ReadOnlySpan<double> WaterPh { get; init; }

        /// <summary>A water pH that is not known stops nothing.</summary>
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T Several<T>(int row, out T holds, out T flags)
            where T : unmanaged, ILanes<T>
        {
            var (zero, highest) = (T.Of(0), T.Of(PhScale.Highest));
            var k = RowSums.At<T>(Potassium, row);
            var mg = RowSums.At<T>(Magnesium, row);
            var ca = RowSums.At<T>(Calcium, row);
            var buffer = RowSums.At<T>(BufferPh, row);
            var ph = RowSums.At<T>(WaterPh, row);
            var stopped =
                (ph <= zero)
                | (ph > highest)
                | (ph > T.Of(Column.waterPhLimit))
                | Column.pair.LooksSwapped(ph, buffer)
                | Column.pair.Contradicts(ph, buffer);
            holds = (k >= zero) & (mg >= zero) & (ca >= zero) & (buffer > zero) & (buffer <= highest) & ~stopped;
            var bases =
                CationMath.Charge(k, Column.perPotassium)
                + CationMath.Charge(mg, Column.perMagnesium)
                + CationMath.Charge(ca, Column.perCalcium);
            if (!Sodium.IsEmpty)
            {
                var na = RowSums.At<T>(Sodium, row);
                na = T.When(T.IsUnknown(na), zero, na);
                holds &= na >= zero;
                bases += CationMath.Charge(na, Column.perSodium);
            }

            var capacity = CationMath.Capacity(
                bases,
                CationMath.AcidityMilliequivalents(buffer, Column.Term.StartPh, Column.Term.MilliequivalentsPerPhUnit)
            );
            holds &= capacity <= T.Of(double.MaxValue);
            flags = (ph > T.Of(Column.freeLimePh)) & T.OfBits(CalciumInflated);
            flags |= (buffer >= T.Of(Column.Term.StartPh)) & T.OfBits(NoneAboveStart);
            return capacity;
        }

        public (double Answer, RowStatus Status, ulong Flags) One(int row) =>
            Column.Answer(
                Potassium[row],
                Magnesium[row],
                Calcium[row],
                Sodium.IsEmpty || double.IsNaN(Sodium[row]) ? 0 : Sodium[row],
                BufferPh[row],
                WaterPh[row]
            );
    }

    /// <summary>What stands for one meq; infinite for a cation that the term does not count.</summary>
    private static double Divisor(AcidityTerm term, SoilAnalyte cation)
    {
        foreach (var (counted, perMilliequivalent) in term.Divisors)
        {
            if (counted == cation)
            {
                return perMilliequivalent;
            }
        }

        return double.PositiveInfinity;
    }

    private static RowFindings FindingsOf(AcidityTerm term, SoilBuffer buffer)
    {
        (string, string)[] pair = [("water", "The row's water pH"), ("buffer", $"its buffer pH ({SoilWords.For(buffer)})")];
        string buffers = string.Join(", ", term.Buffers.Select(SoilWords.For));
        Finding[] always =
        [
            FindingCatalog.Create(
                ColumnCodes.ValueImpossible,
                ("limits", "a pH lies above 0 and at most at 14, no cation below 0")
            ),
            FindingCatalog.Create(ColumnCodes.ValueMissing, ("what", "potassium, magnesium or calcium")),
            FindingCatalog.Create(SoilCodes.PhBufferSwapped, pair),
            FindingCatalog.Create(SoilCodes.PhBufferContradict, pair),
            FindingCatalog.Create(SoilCodes.AcidityMissing, ("ph", "of the row"), ("buffers", buffers)),
            FindingCatalog.Create(
                SoilCodes.AcidityNoneAboveStart,
                ("buffer", "of the row"),
                ("start", Amounts.Print(term.StartPh, 2)),
                ("term", term.Title)
            ),
            FindingCatalog.Create(SoilCodes.CalciumInflated, ("ph", "of the row")),
        ];
        return term.WaterPhLimit is { } limit
            ? RowFindings.InOrder([.. always, OutsideDomainOf(term, limit)])
            : RowFindings.InOrder(always);
    }

    private static Finding OutsideDomainOf(AcidityTerm term, double limit) =>
        FindingCatalog.Create(
            SoilCodes.AcidityOutsideDomain,
            ("term", term.Title),
            ("limit", Amounts.Print(limit, 2)),
            ("ph", "the row's")
        );
}
