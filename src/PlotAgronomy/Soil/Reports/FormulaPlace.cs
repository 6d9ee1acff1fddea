namespace PlotAgronomy.Soil;

/// <summary>A quantity that fills a place of a formula; it is printed when the line is asked for.</summary>
internal readonly record struct FormulaPlace(string Place, double Value, int Decimals, string Unit = "")
{
    /// <summary>Text in the place of a quantity; null where it is one.</summary>
    internal string? Words { get; private init; }

    internal (string Place, string Value) Printed => (Place, Words ?? WithUnit(Amounts.Print(Value, Decimals)));

    internal static FormulaPlace InWords(string place, string words) => new(place, 0, 0) { Words = words };

    private string WithUnit(string number) => Unit.Length == 0 ? number : $"{number} {Unit}";
}
