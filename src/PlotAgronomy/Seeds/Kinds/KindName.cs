using System.Collections.Immutable;

namespace PlotAgronomy.Seeds;

/// <summary>One of the names a kind answers to, as it is compared.</summary>
internal sealed class KindName(ListedKind kind, string printed)
{
    internal ListedKind Kind => kind;

    internal string Printed => printed;

    internal ImmutableArray<string> Words { get; } = KindNames.Words(printed);

    internal string Joined { get; } = KindNames.Joined(printed);

    /// <summary>Gets what a name in full is looked up by.</summary>
    internal string[] Keys => [Joined, KindNames.InOrder(Words)];
}
