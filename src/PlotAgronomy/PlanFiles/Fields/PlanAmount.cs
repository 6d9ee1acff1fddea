using System.Globalization;

namespace PlotAgronomy.PlanFiles;

/// <summary>An amount with its unit.</summary>
/// <remarks>Read in any unit and held in one. The unit it was typed in is not kept: it is written in the unit of the example,
/// or in the first other one, whose short text reads back as the very same amount; else with every digit in the unit it is
/// held in.</remarks>
internal sealed class PlanAmount<T> : PlanText<T>
    where T : struct
{
    private const int ShortDecimals = 6;

    private readonly Reader read;
    private readonly Writing how;
    private readonly bool mayBeZero;

    internal PlanAmount(string example, Reader read, Writing how, bool mayBeZero = false)
        : base(example, read, value => how.Candidates(value, example).FirstOrDefault(text => ReadsBack(text, value, read, how)))
    {
        this.read = read;
        this.how = how;
        this.mayBeZero = mayBeZero;
    }

    protected override string Word => "amount";

    protected override string Expected => $"an amount with its unit ({string.Join(", ", how.Units)}), in quotes";

    /// <summary>Whether a text reads back as the very same amount.</summary>
    internal bool CanBeWritten(T value) => how.Candidates(value, Example).Any(text => ReadsBack(text, value, read, how));

    protected override bool Accepts(T value, PlanNode node, PlanPart at)
    {
        if (!mayBeZero && how.Held(value) <= 0)
        {
            at.Report(node, $"must be above zero, found '{node.Text}'");
            return false;
        }

        if (how.Limit is { } limit && how.Held(value) > PlanLimits.All[limit])
        {
            string most = $"{Amounts.Print(PlanLimits.All[limit], 0)} {how.Units[0]}";
            at.Report(node, $"at most {most} can be meant, found '{node.Text}': is the unit right?");
            return false;
        }

        return true;
    }

    private static bool ReadsBack(string text, T value, Reader read, Writing how) =>
        read(text, out var again, out _) && how.Held(again).Equals(how.Held(value));

    /// <param name="Print">Prints an amount in a unit with at most so many decimals.</param>
    /// <param name="Held">The number that is held.</param>
    /// <param name="Units">The unit that is held first, then others that people use.</param>
    /// <param name="Limit">Id of the most that is taken, in the first unit; null where the reader sets it.</param>
    /// <param name="Scale">First unit to the number that is held: 100 for percent.</param>
    internal sealed record Writing(
        Func<T, string, int?, string> Print,
        Func<T, double> Held,
        string[] Units,
        string? Limit = null,
        double Scale = 1
    )
    {
        internal IEnumerable<string> Candidates(T value, string example)
        {
            string usual = example[(example.IndexOf(' ', StringComparison.Ordinal) + 1)..];
            foreach (string unit in Units.Prepend(usual).Distinct())
            {
                yield return Print(value, unit, ShortDecimals);
            }

            double amount = Held(value) * Scale;
            foreach (double near in (double[])[amount, Math.BitIncrement(amount), Math.BitDecrement(amount)])
            {
                string shortest = near.ToString("R", CultureInfo.InvariantCulture);
                if (decimal.TryParse(shortest, NumberStyles.Float, CultureInfo.InvariantCulture, out decimal digits))
                {
                    yield return string.Create(CultureInfo.InvariantCulture, $"{digits} {Units[0]}");
                }
            }
        }
    }
}
