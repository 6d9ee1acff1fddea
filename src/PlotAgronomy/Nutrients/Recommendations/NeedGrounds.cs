using System.Collections.Immutable;

namespace PlotAgronomy.Nutrients;

/// <summary>What stands behind a need: the numbers it came from. Words, ratings and remarks are made when asked for.</summary>
internal abstract class NeedGrounds
{
    internal abstract string Why { get; }

    internal abstract ImmutableArray<Source> Sources { get; }

    internal virtual NutrientRating? Rating => null;

    internal virtual bool IsLegalMaximum => false;

    /// <summary>The part that raises the soil, in lb/ac; null for a system without parts.</summary>
    internal virtual double? RaisingPart => null;

    /// <summary>The part that puts back what leaves, in lb/ac; null for a system without parts.</summary>
    internal virtual double? ReplacingPart => null;

    /// <summary>Step of the publisher's tables in lb/ac; null where they are not rounded.</summary>
    internal virtual double? PrintedStep => null;

    /// <summary>The lower end of the advice about a rate, in lb/ac.</summary>
    internal virtual double Low(double rate) => rate;

    /// <summary>The upper end of the advice about a rate, in lb/ac.</summary>
    internal virtual double High(double rate) => rate;

    internal virtual ImmutableArray<Finding> Findings => [];

    internal abstract ImmutableArray<WorkedLine> Lines();
}
