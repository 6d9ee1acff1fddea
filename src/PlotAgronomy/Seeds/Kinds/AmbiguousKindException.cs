using System.Collections.Immutable;

namespace PlotAgronomy.Seeds;

/// <summary>A name fits several kinds. Nothing is guessed: the message lists them.</summary>
public sealed class AmbiguousKindException : ArgumentException
{
    internal AmbiguousKindException(string message, ImmutableArray<CropKind> candidates)
        : base(message) => Candidates = candidates;

    /// <summary>Gets the kinds the name fits.</summary>
    public ImmutableArray<CropKind> Candidates { get; }
}
