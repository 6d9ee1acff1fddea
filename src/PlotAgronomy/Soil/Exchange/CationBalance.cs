using System.Collections.Immutable;
using System.Globalization;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Soil;

/// <summary>Exchange capacity and base saturation of a soil, and the acidity term they rest on.</summary>
/// <remarks>Capacity = K + Mg + Ca (+ Na) + acidity; saturation = 100 x cation / capacity.</remarks>
[JsonConverter(typeof(NotForJson))]
public sealed class CationBalance : IWorkedResult
{
    private readonly BufferPh? buffer;
    private readonly Func<IEnumerable<Finding>> remarks;

    private CationBalance(CationSum sum)
    {
        Term = sum.Term;
        buffer = sum.Buffer;
        Acidity = sum.Acidity;
        BaseSum = sum.BaseSum;
        Capacity = sum.Capacity;
        Bases = Capacity is { Milliequivalents: > 0 } capacity
            ?
            [
                .. sum.Bases.Select(b =>
                    b.WithSaturation(
                        Fraction.FromValue(CationMath.Saturation(b.Charge.Milliequivalents, capacity.Milliequivalents))
                    )
                ),
            ]
            : sum.Bases;
        remarks = sum.Remarks;
    }

    /// <summary>Gets the acidity term, or null when the acidity was printed by the
    /// laboratory or taken as zero at high pH.</summary>
    public AcidityTerm? Term { get; }

    /// <summary>Gets the bases with their saturation.</summary>
    public ImmutableArray<CationShare> Bases { get; }

    /// <summary>Gets the sum of the bases.</summary>
    public CationCharge BaseSum { get; }

    /// <summary>Gets the acidity, or null when it is not known.</summary>
    public CationCharge? Acidity { get; }

    /// <summary>Gets the exchange capacity, or null when the acidity is not known.</summary>
    public CationCharge? Capacity { get; }

    /// <summary>Gets the base saturation, or null when the capacity is not known or zero.</summary>
    public Fraction? BaseSaturation =>
        Capacity is { Milliequivalents: > 0 } capacity
            ? Fraction.FromValue(CationMath.Saturation(BaseSum.Milliequivalents, capacity.Milliequivalents))
            : null;

    /// <inheritdoc/>
    public ImmutableArray<Finding> Findings => Finding.InOrder(remarks().Concat(Extremes()));

    /// <inheritdoc/>
    public ImmutableArray<Source> Sources => (Term ?? CationSumSteps.CommonDivisors).Origin.Sources;

    /// <summary>Computes the balance from a report with a named acidity term and the buffer reading it takes.</summary>
    /// <param name="report">Report with K, Mg, Ca (and Na) in any unit.</param>
    /// <param name="term">Acidity term.</param>
    /// <returns>The balance; without a capacity, and with a finding, when the report lacks the reading.</returns>
    /// <exception cref="ArgumentException">A cation's unit cannot be turned to the term's
    /// basis with what the report prints.</exception>
    public static CationBalance For(SoilReport report, AcidityTerm term)
    {
        ArgumentNullException.ThrowIfNull(report);
        ArgumentNullException.ThrowIfNull(term);
        return new CationBalance(CationSumSteps.ByTerm(report, term));
    }

    /// <summary>Computes the balance with every acidity term whose buffer the report
    /// carries: two buffers show two capacities.</summary>
    /// <param name="report">Report.</param>
    /// <returns>One balance a term, in the order of <see cref="AcidityTerm.All"/>, without terms from memory, which
    /// <see cref="For"/> gives.</returns>
    public static ImmutableArray<CationBalance> ByEveryTerm(SoilReport report)
    {
        ArgumentNullException.ThrowIfNull(report);
        return [.. AcidityTerm.All.Where(t => t.Buffers.Any(b => report.FindBuffer(b) is not null)).Select(t => For(report, t))];
    }

    /// <summary>Computes the balance from the acidity the laboratory printed.</summary>
    /// <param name="report">Report with <see cref="SoilReport.ExchangeableAcidity"/>.</param>
    /// <returns>The balance.</returns>
    /// <exception cref="ArgumentException">The report prints no acidity.</exception>
    public static CationBalance FromPrintedAcidity(SoilReport report)
    {
        ArgumentNullException.ThrowIfNull(report);
        return new CationBalance(CationSumSteps.ByPrintedAcidity(report));
    }

    /// <summary>Computes the balance of a near-neutral soil without acidity: the capacity is the sum of the bases.</summary>
    /// <param name="report">Report with a water pH of at least 6.5.</param>
    /// <returns>The balance, with a note; below pH 6.5 no capacity, with a warning.</returns>
    /// <exception cref="ArgumentException">The report prints no water pH.</exception>
    public static CationBalance WithoutAcidity(SoilReport report)
    {
        ArgumentNullException.ThrowIfNull(report);
        return new CationBalance(CationSumSteps.WithoutAcidity(report));
    }

    /// <summary>The share of one cation.</summary>
    /// <param name="cation">Cation.</param>
    /// <returns>The share, or null when it was not counted.</returns>
    public CationShare? Find(SoilAnalyte cation) => Bases.FirstOrDefault(b => b.Cation == cation);

    /// <summary>The same balance with each term rounded before it is added, as laboratories print it.</summary>
    /// <param name="decimals">Decimals of a meq; 0 to 6.</param>
    /// <returns>The rounded balance.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside 0 to 6.</exception>
    public CationBalance WithTermsRounded(int decimals)
    {
        Guard.Between(decimals, 0, 6, "decimals");
        CationCharge Rounded(CationCharge charge) =>
            CationCharge.Of(Math.Round(charge.Milliequivalents, decimals, MidpointRounding.AwayFromZero), BaseSum.Basis);
        return new CationBalance(
            new CationSum
            {
                Term = Term,
                Buffer = buffer,
                Bases = [.. Bases.Select(b => b.WithCharge(Rounded(b.Charge)))],
                Acidity = Acidity is { } acidity ? Rounded(acidity) : null,
                Basis = BaseSum.Basis,
                Remarks = remarks,
            }
        );
    }

    /// <inheritdoc/>
    public ImmutableArray<WorkedLine> ShowWork()
    {
        var lines = ImmutableArray.CreateBuilder<WorkedLine>();
        foreach (var share in Bases)
        {
            string name = SoilWords.Opening(share.Cation);
            Add(
                share.Division is { } division
                    ? SoilFormulas
                        .All["cation-charge"]
                        .Line(
                            share.Charge.ToString(),
                            ("cation", name),
                            ("concentration", Amounts.Print(division.Concentration, 2)),
                            ("ppm per meq", Amounts.Print(division.PerMilliequivalent, 2))
                        )
                    : SoilFormulas.All["charge-as-printed"].Line(share.Charge.ToString(), ("charge", name))
            );
        }

        if (Acidity is { } acidity)
        {
            Add(AcidityLine(acidity));
        }

        if (Capacity is { } capacity)
        {
            Add(
                SoilFormulas
                    .All["exchange-capacity"]
                    .Line(
                        capacity.ToString(),
                        ("bases", Amounts.Print(BaseSum.Milliequivalents, 3)),
                        ("acidity", Amounts.Print(Acidity!.Value.Milliequivalents, 3))
                    )
            );
            foreach (var share in Bases)
            {
                if (share.Saturation is { } part)
                {
                    Add(SaturationLine(share, part, capacity));
                }
            }

            if (BaseSaturation is { } saturation)
            {
                Add(
                    SoilFormulas
                        .All["base-saturation"]
                        .Line(
                            Amounts.Print(saturation, 1),
                            ("bases", Amounts.Print(BaseSum.Milliequivalents, 3)),
                            ("capacity", Amounts.Print(capacity.Milliequivalents, 3))
                        )
                );
            }
        }

        return lines.ToImmutable();

        void Add(WorkedLine line) => lines.Add(line.From(Term?.Origin));
    }

    private static WorkedLine SaturationLine(CationShare share, Fraction part, CationCharge capacity) =>
        SoilFormulas
            .All["cation-saturation"]
            .Line(
                Amounts.Print(part, 1),
                ("cation", SoilWords.For(share.Cation)),
                ("charge", Amounts.Print(share.Charge.Milliequivalents, 3)),
                ("capacity", Amounts.Print(capacity.Milliequivalents, 3))
            );

    private WorkedLine AcidityLine(CationCharge acidity)
    {
        if (Term is { } term && buffer is { } reading)
        {
            return SoilFormulas
                .All["acidity-of-buffer"]
                .Line(
                    acidity.ToString(),
                    ("term", term.Title),
                    ("meq per pH", Amounts.Print(term.MilliequivalentsPerPhUnit, 2)),
                    ("start pH", Ph(term.StartPh)),
                    ("buffer pH", Ph(reading.Value))
                );
        }

        return acidity.Milliequivalents > 0
            ? SoilFormulas.All["charge-as-printed"].Line(acidity.ToString(), ("charge", "Acidity"))
            : SoilFormulas.All["acidity-none"].Line(acidity.ToString());
    }

    private static string Ph(double value) => value.ToString("0.00", CultureInfo.InvariantCulture);

    private IEnumerable<Finding> Extremes()
    {
        if (Find(SoilAnalyte.Magnesium)?.Saturation is not { } magnesium)
        {
            yield break;
        }

        if (magnesium.Percent < SoilConstants.All["magnesium-low"])
        {
            yield return FindingCatalog.Create(SoilCodes.MagnesiumLow, ("percent", Amounts.Print(magnesium, 1)));
        }

        if (Find(SoilAnalyte.Potassium)?.Saturation is { } potassium && potassium > magnesium)
        {
            yield return FindingCatalog.Create(
                SoilCodes.PotassiumOverMagnesium,
                ("potassium", Amounts.Print(potassium, 1)),
                ("magnesium", Amounts.Print(magnesium, 1))
            );
        }
    }

    /// <summary>What it comes to: the last line of its working.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => this.InWords();
}
