namespace PlotAgronomy.Tests.Formulas;

/// <summary>One value for every place of a formula.</summary>
public sealed class Draw
{
    private readonly Dictionary<string, double> values;

    internal Draw(FormulaCheck check, Random random) =>
        values = check.Domain.ToDictionary(d => d.Place, d => d.Low + (random.NextDouble() * (d.High - d.Low)));

    internal IEnumerable<KeyValuePair<string, double>> Values => values;

    public double this[string place] => values[place];
}
