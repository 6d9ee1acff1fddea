namespace PlotAgronomy.Liming;

/// <summary>Words of the trade for lime; a plan file uses the same ones.</summary>
internal static class LimingWords
{
    internal static EnumWords<LimingForm> Forms { get; } = EnumWords<LimingForm>.FromNames();
}
