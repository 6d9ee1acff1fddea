using System.Collections.Immutable;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Liming;

/// <summary>Fewer pounds of finely ground or pelletized lime in place of ordinary lime, where a rate assumes coarse lime and its
/// laboratory allows it.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class FineLimeAllowance : IWorkedResult
{
    private static readonly Lazy<IReadOnlyDictionary<string, Row>> RowsByBasis = Table.Keyed(
        "Liming/Data/allowance.csv",
        r => r.Text("basis_id"),
        Row.FromCsv
    );

    private readonly Row? allowance;

    private FineLimeAllowance(LimeRate rate, Row? allowance)
    {
        Rate = rate;
        this.allowance = allowance;
    }

    /// <summary>Gets the rate that was asked about.</summary>
    public LimeRate Rate { get; }

    /// <summary>Gets the smaller rate of fine lime allowed; null when the allowance does not apply.</summary>
    public ApplicationRate? Low => allowance is { } row ? Fine(row.FineLow, row) : null;

    /// <summary>Gets the larger rate of fine lime allowed; null when the allowance does not apply.</summary>
    public ApplicationRate? High => allowance is { } row ? Fine(row.FineHigh, row) : null;

    /// <inheritdoc/>
    public ImmutableArray<Finding> Findings =>
        allowance is null ? [FindingCatalog.Create(LimingCodes.AllowanceRefused, ("basis", Rate.Basis.Name))] : [];

    /// <inheritdoc/>
    public ImmutableArray<Source> Sources => LimingFormulas.All["fine-lime"].Origin!.Sources;

    /// <summary>Asks for the allowance. It is refused for every basis but ordinary lime of the laboratory that gives
    /// it.</summary>
    /// <param name="rate">Rate.</param>
    /// <returns>The allowance, or a finding that refuses it.</returns>
    /// <remarks>60 to 65 lb of fine lime for 90 lb of ordinary lime, a ratio of 0.667 to 0.722.</remarks>
    public static FineLimeAllowance For(LimeRate rate)
    {
        ArgumentNullException.ThrowIfNull(rate);
        return new(rate, RowsByBasis.Value.GetValueOrDefault(rate.Basis.Id));
    }

    /// <inheritdoc/>
    public ImmutableArray<WorkedLine> ShowWork() =>
        Low is { } low && High is { } high && allowance is { } row
            ? [LineOf("least", low, row.FineLow, row), LineOf("most", high, row.FineHigh, row)]
            : [];

    private ApplicationRate Fine(double fine, Row row) =>
        ApplicationRate.FromPoundsPerAcre(LimeSums.FineLime(Rate.OfBasis.PoundsPerAcre, fine, row.Ordinary));

    private WorkedLine LineOf(string end, ApplicationRate answer, double fine, Row row) =>
        LimingFormulas
            .All["fine-lime"]
            .Line(
                Amounts.Print(answer, "lb/1000 ft2", 1),
                ("end", end),
                ("rate", Amounts.Print(Rate.OfBasis, "lb/1000 ft2", 1)),
                ("fine lime", Amounts.Print(fine, 1)),
                ("ordinary lime", Amounts.Print(row.Ordinary, 1))
            )
            .From(row.Origin);

    private sealed record Row(double Ordinary, double FineLow, double FineHigh, Origin Origin)
    {
        internal static Row FromCsv(CsvRow row) =>
            new(
                row.Number("ordinary_lb_per_1000_ft2"),
                row.Number("fine_low_lb_per_1000_ft2"),
                row.Number("fine_high_lb_per_1000_ft2"),
                row.Origin()
            );
    }

    /// <summary>What it comes to: the last line of its working.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => this.InWords();
}
