using System.Collections.Immutable;

namespace PlotAgronomy.Nutrients;

/// <summary>What stands behind a need: the numbers it came from. Words, ratings and remarks are made when asked for.</summary>
internal abstract class NeedGrounds
{
    internal abstract string Why { get; }

    internal abstract ImmutableArray<Source> Sources { get; }

    internal virtual NutrientRating? Rating => null;

    internal virtual ImmutableArray<Finding> Findings => [];

    internal abstract ImmutableArray<WorkedLine> Lines();
}
