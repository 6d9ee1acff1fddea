using System.Collections.Frozen;
using System.Collections.Immutable;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Liming;

/// <summary>Fewer pounds of finely ground or pelletized lime in place of ordinary lime, where a rate assumes coarse lime and its
/// laboratory allows it.</summary>
public sealed class FineLimeAllowance : IWorkedResult
{
    private static readonly Lazy<FrozenDictionary<string, (double Low, double High)>> SharesByBasis = Table.Keyed(
        "Liming/Data/allowance.csv",
        r => r.Text("basis_id"),
        r =>
        {
            double ordinary = r.Number("ordinary_lb_per_1000_ft2");
            return (r.Number("fine_low_lb_per_1000_ft2") / ordinary, r.Number("fine_high_lb_per_1000_ft2") / ordinary);
        }
    );

    private readonly LimeRate rate;

    private FineLimeAllowance(LimeRate rate) => this.rate = rate;

    /// <summary>Gets the smaller rate of fine lime allowed; null when the allowance does not apply.</summary>
    public ApplicationRate? Low { get; private init; }

    /// <summary>Gets the larger rate of fine lime allowed; null when the allowance does not apply.</summary>
    public ApplicationRate? High { get; private init; }

    /// <inheritdoc/>
    public required ImmutableArray<Finding> Findings { get; init; }

    /// <inheritdoc/>
    public ImmutableArray<string> SourceIds => ["PRACTICE"];

    /// <summary>Asks for the allowance. It is refused for every basis but ordinary lime of the laboratory that gives
    /// it.</summary>
    /// <param name="rate">Rate.</param>
    /// <returns>The allowance, or a finding that refuses it.</returns>
    /// <remarks>60 to 65 lb of fine lime for 90 lb of ordinary lime (PRACTICE), a ratio of 0.667 to 0.722.</remarks>
    public static FineLimeAllowance For(LimeRate rate)
    {
        ArgumentNullException.ThrowIfNull(rate);
        return !SharesByBasis.Value.TryGetValue(rate.Basis.Id, out var shares)
            ? new(rate) { Findings = [FindingCatalog.Create("lime-allowance-refused", ("basis", rate.Basis.Name))] }
            : new(rate)
            {
                Low = rate.OfBasis * shares.Low,
                High = rate.OfBasis * shares.High,
                Findings = [],
            };
    }

    /// <inheritdoc/>
    public ImmutableArray<WorkedLine> ShowWork() =>
        Low is { } low && High is { } high
            ?
            [
                new(
                    "Fine lime",
                    "a laboratory's allowance for ordinary lime",
                    $"{Amounts.Print(rate.OfBasis, "lb/1000 ft2", 1)} becomes {Amounts.Print(low, "lb/1000 ft2", 1)} to "
                        + $"{Amounts.Print(high, "lb/1000 ft2", 1)}",
                    "PRACTICE"
                ),
            ]
            : [];
}
