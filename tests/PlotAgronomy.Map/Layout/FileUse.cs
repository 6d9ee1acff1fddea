namespace PlotAgronomy.Map.Layout;

/// <summary>The short name of what a file uses of another, and the line of its first use.</summary>
internal sealed record FileUse(string Name, bool IsType, int Line)
{
    public override string ToString() => FormattableString.Invariant($"{Name}:{Line}");
}
