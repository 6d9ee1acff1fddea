using System.Collections.Immutable;

namespace PlotAgronomy.Soil;

/// <summary>What an exchange capacity is summed from.</summary>
internal sealed record CationSum
{
    internal required AcidityTerm? Term { get; init; }

    internal required BufferPh? Buffer { get; init; }

    /// <summary>Bases whose share is not known yet.</summary>
    internal required ImmutableArray<CationShare> Bases { get; init; }

    internal required CationCharge? Acidity { get; init; }

    internal required CationChargeBasis Basis { get; init; }

    /// <summary>What was noticed on the way, made when asked for.</summary>
    internal required Func<IEnumerable<Finding>> Remarks { get; init; }

    internal CationCharge BaseSum => CationCharge.Of(Bases.Sum(b => b.Charge.Milliequivalents), Basis);

    internal CationCharge? Capacity =>
        Acidity is { } acidity
            ? CationCharge.Of(CationMath.Capacity(BaseSum.Milliequivalents, acidity.Milliequivalents), Basis)
            : null;
}
