using System.Globalization;

namespace PlotAgronomy.PlanFiles;

/// <summary>Typed access to one object of a plan file that already went through <see cref="PlanShapeCheck"/>.</summary>
/// <remarks>What the check reported reads as null here, so that each mistake is reported once and reading goes on.</remarks>
internal sealed class PlanObject(PlanNode node, List<PlanProblem> problems)
{
    internal delegate bool TryRead<T>(string? text, out T value, out string problem);

    internal PlanNode Node => node;

    internal bool Has(string name) => node.Find(name) is not null;

    internal string? Text(string name) =>
        node.Find(name) is { Kind: PlanNodeKind.Text } found && !string.IsNullOrWhiteSpace(found.Text) ? found.Text : null;

    internal T? Amount<T>(string name, TryRead<T> read)
        where T : struct
    {
        if (node.Find(name) is not { Kind: PlanNodeKind.Text } found)
        {
            return null;
        }

        if (read(found.Text, out var value, out string problem))
        {
            return value;
        }

        problems.Add(found.Problem(problem));
        return null;
    }

    /// <summary>An amount that must be above zero, such as an area or a package.</summary>
    internal T? PositiveAmount<T>(string name, TryRead<T> read, Func<T, double> measure)
        where T : struct
    {
        if (Amount(name, read) is not T value)
        {
            return null;
        }

        if (measure(value) > 0)
        {
            return value;
        }

        problems.Add(node.Find(name)!.Problem($"must be above zero, found '{node.Find(name)!.Text}'"));
        return null;
    }

    internal double? Number(string name) =>
        node.Find(name) is { Kind: PlanNodeKind.Number } found
        && double.TryParse(found.Text, NumberStyles.Float, CultureInfo.InvariantCulture, out double value)
            ? value
            : null;

    internal decimal? Money(string name)
    {
        if (node.Find(name) is not { Kind: PlanNodeKind.Number } found)
        {
            return null;
        }

        if (decimal.TryParse(found.Text, NumberStyles.Float, CultureInfo.InvariantCulture, out decimal value))
        {
            return value;
        }

        problems.Add(found.Problem($"expected an amount of money, found {found.Text}"));
        return null;
    }

    internal bool? Flag(string name) => node.Find(name) is { Kind: PlanNodeKind.TrueOrFalse } found ? found.Text == "true" : null;

    internal DateOnly? Date(string name) =>
        node.Find(name) is { Kind: PlanNodeKind.Text } found
        && DateOnly.TryParseExact(found.Text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var date)
            ? date
            : null;

    /// <summary>The value behind a word of a choice.</summary>
    internal T? Choice<T>(string name, PlanWords<T> words)
        where T : struct =>
        node.Find(name) is { Kind: PlanNodeKind.Text } found && words.TryFind(found.Text, out var value) ? value : null;

    internal T? Chosen<T>(string name, PlanWords<T> words)
        where T : class =>
        node.Find(name) is { Kind: PlanNodeKind.Text } found && words.TryFind(found.Text, out var value) ? value : null;

    internal PlanObject? Object(string name) =>
        node.Find(name) is { Kind: PlanNodeKind.Object } found ? new PlanObject(found, problems) : null;

    internal IEnumerable<PlanObject> Objects(string name) =>
        node.Find(name) is { Kind: PlanNodeKind.Array } found
            ? found.Items.Where(i => i.Kind == PlanNodeKind.Object).Select(i => new PlanObject(i, problems))
            : [];

    internal IEnumerable<(double First, double Second)> Pairs(string name)
    {
        if (node.Find(name) is not { Kind: PlanNodeKind.Array } found)
        {
            yield break;
        }

        foreach (
            var item in found.Items.Where(i =>
                i.Kind == PlanNodeKind.Array && i.Items.Count == 2 && i.Items.All(n => n.Kind == PlanNodeKind.Number)
            )
        )
        {
            yield return (
                double.Parse(item.Items[0].Text, CultureInfo.InvariantCulture),
                double.Parse(item.Items[1].Text, CultureInfo.InvariantCulture)
            );
        }
    }

    /// <summary>Reports a mistake, unless the same place was reported already.</summary>
    internal void Report(string name, string text)
    {
        var place = node.Find(name) ?? node;
        if (!problems.Any(p => p.Path == place.Path && p.Line == place.Line))
        {
            problems.Add(place.Problem(text));
        }
    }

    /// <summary>Runs a step of the library that refuses impossible input, and reports its refusal at a field.</summary>
    internal T? Try<T>(string name, Func<T> step)
        where T : class
    {
        try
        {
            return step();
        }
        catch (Exception refused) when (refused is ArgumentException or InvalidOperationException)
        {
            Report(name, FirstLine(refused.Message));
            return null;
        }
    }

    private static string FirstLine(string message) => message.Split(" (Parameter", 2)[0].ReplaceLineEndings(" ");
}
