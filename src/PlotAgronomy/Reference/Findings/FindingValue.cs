namespace PlotAgronomy;

/// <summary>One value that a finding is about, as it is printed in the finding's text.</summary>
/// <param name="Name">Name of the place in the text, such as <c>ph</c>.</param>
/// <param name="Text">The value with its unit.</param>
public readonly record struct FindingValue(string Name, string Text)
{
    /// <summary>Text such as <c>ph: 5.4</c>.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Name}: {Text}";
}
