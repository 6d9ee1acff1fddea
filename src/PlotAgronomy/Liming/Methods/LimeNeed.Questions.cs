using System.Collections.Immutable;

namespace PlotAgronomy.Liming;

/// <content>What is asked for when the method does not answer.</content>
public sealed partial class LimeNeed
{
    /// <summary>Gets what to ask where the method does not answer; none where it does.</summary>
    public ImmutableArray<OpenQuestion> Questions => [.. LimeQuestions.For(this)];
}
