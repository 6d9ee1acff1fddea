using System.Collections.Immutable;
using System.Diagnostics;
using System.Diagnostics.CodeAnalysis;

namespace PlotAgronomy.PlanFiles;

/// <summary>One object of a plan file while it is read: checks its fields, gives their values, reports mistakes.</summary>
/// <remarks>A field is read once, when first asked for. A mistake is reported where it stands; whatever is made of it stays
/// unread in silence, so that each mistake is told once and all are told together.</remarks>
internal sealed class PlanPart
{
    /// <summary>What may stand in a field that may be left out.</summary>
    internal const string NotStated = "not stated";

    private const string BeyondReckoning = "these figures are too large or too small to reckon with; is one of them wrong?";

    private readonly PlanNode node;
    private readonly IPlanDefinition shape;
    private readonly IReadOnlyDictionary<PlanField, Reader> readers;
    private readonly PlanPart? around;
    private readonly Dictionary<PlanField, object?> values;
    private Dictionary<PlanNode, PlanPart>? parts;

    /// <param name="node">The object.</param>
    /// <param name="shape">What it is.</param>
    /// <param name="readers">How each of its fields is read.</param>
    /// <param name="around">The object that it stands in; null for the whole file.</param>
    /// <param name="problems">Where mistakes are reported.</param>
    /// <param name="reading">What the reading may open, and how it took what was typed.</param>
    internal PlanPart(
        PlanNode node,
        IPlanDefinition shape,
        IReadOnlyDictionary<PlanField, Reader> readers,
        PlanPart? around,
        List<PlanProblem> problems,
        PlanReading? reading = null
    )
    {
        this.node = node;
        this.shape = shape;
        this.readers = readers;
        this.around = around;
        values = new(readers.Count);
        Problems = problems;
        Reading = reading ?? around?.Reading;
        if (around is not null)
        {
            (around.parts ??= []).Add(node, this);
        }
    }

    /// <summary>What stands in a field of a part; null when that could not be read and was reported.</summary>
    internal delegate object? Reader(PlanNode node, PlanPart at);

    internal List<PlanProblem> Problems { get; }

    /// <summary>What the reading may open, and how it took what was typed; null where nothing is asked of that.</summary>
    internal PlanReading? Reading { get; }

    /// <summary>The object that this one stands in.</summary>
    internal PlanPart Around => around ?? this;

    /// <summary>The whole file.</summary>
    internal PlanPart Plan => around?.Plan ?? this;

    internal bool Has(PlanField field) => NodeOf(field) is not null;

    /// <summary>The value of a field; nothing is made of this part when it is not there or could not be read.</summary>
    internal T Get<T>(PlanField<T> field) => Value(field) is T value ? value : throw new UnreadException();

    /// <summary>The value of a field, or null (of numbers and amounts zero).</summary>
    internal T? Find<T>(PlanField<T> field) => Value(field) is T value ? value : default;

    /// <summary>The value of a field, or null.</summary>
    internal T? Maybe<T>(PlanField<T> field)
        where T : struct => Value(field) is T value ? value : null;

    /// <summary>The items of a list; none when it is not there.</summary>
    internal ImmutableArray<T> All<T>(PlanField<ImmutableArray<T>> field) => Maybe(field) ?? [];

    /// <summary>Whether all items of a list could be read.</summary>
    internal bool IsWhole<T>(PlanField<ImmutableArray<T>> field) =>
        node.Find(field.Name) is { } list && list.Items.Count == All(field).Length;

    /// <summary>The objects that stand in a field, each with its own fields.</summary>
    internal ImmutableArray<PlanPart> Parts(PlanField field)
    {
        Value(field);
        return node.Find(field.Name) is not { } found || parts is null ? []
            : parts.TryGetValue(found, out var one) ? [one]
            : [.. found.Items.Where(parts.ContainsKey).Select(i => parts[i])];
    }

    /// <summary>The object that stands in a field, with its own fields; null when none does.</summary>
    internal PlanPart? Part(PlanField field) => Parts(field).FirstOrDefault();

    /// <summary>To be thrown when nothing can be made of this part for mistakes that are reported.</summary>
    internal static Exception Unread() => new UnreadException();

    /// <summary>A step that may refuse its input: that is reported at a field, and nothing is made of this part.</summary>
    internal T Try<T>(PlanField field, Func<T> step) =>
        TryStep(node.Find(field.Name) ?? node, step, out var made) ? made : throw new UnreadException();

    /// <summary>A step that may refuse its input: that is reported at a place.</summary>
    internal bool TryStep<T>(PlanNode place, Func<T> step, [MaybeNullWhen(false)] out T made)
    {
        try
        {
            made = step();
            return true;
        }
        catch (Exception refused) when (refused is ArgumentException or InvalidOperationException or ArithmeticException)
        {
            Report(place, refused is ArithmeticException ? BeyondReckoning : Guard.Said(refused));
            made = default;
            return false;
        }
    }

    /// <summary>Reports what is missing beside a field, even where the field itself was reported already.</summary>
    internal void ReportMissing(PlanField beside, string text) => Problems.Add((node.Find(beside.Name) ?? node).Problem(text));

    /// <summary>Reports what is written correctly and cannot be meant, so that one reading tells it beside the other
    /// mistakes.</summary>
    internal void ReportDoubts(IEnumerable<Finding> findings) =>
        Problems.AddRange(
            PlanSense
                .Problems(node, findings)
                .Where(d => !Problems.Exists(p => p.Path.StartsWith(d.Path, StringComparison.Ordinal)))
        );

    /// <summary>Reports a mistake in a field; <c>throw</c> it to make nothing of this part.</summary>
    internal Exception Report(PlanField field, string text)
    {
        Report(node.Find(field.Name) ?? node, text);
        return new UnreadException();
    }

    /// <summary>Tells how something was taken that may be typed in more than one way; it is no mistake.</summary>
    internal void Tell(PlanNode place, string taken) => Reading?.Taken.Add(place.Problem(taken));

    /// <inheritdoc cref="Tell(PlanNode, string)"/>
    internal void Tell(PlanField field, string taken) => Tell(node.Find(field.Name) ?? node, taken);

    /// <summary>Reports a mistake in one item of a list.</summary>
    internal void ReportItem(PlanField list, int item, string text)
    {
        var found = node.Find(list.Name);
        Report(found is { } there && item < there.Items.Count ? there.Items[item] : node, text);
    }

    /// <summary>Reports a mistake, unless the same place was reported already.</summary>
    internal void Report(PlanNode place, string text)
    {
        double most = PlanLimits.All["mistakes-told"];
        if (Problems.Count <= most && !Problems.Any(p => p.Path == place.Path && p.Line == place.Line))
        {
            Problems.Add(place.Problem(Problems.Count < most ? text : "more mistakes follow; mend these first"));
        }
    }

    /// <summary>Checks every field, then makes of them what they say. What the rooms refuse to make is a problem of this
    /// part, whoever made it and whether or not a field was tried by itself.</summary>
    internal bool TryBuild<T>(Func<PlanPart, T> build, [MaybeNullWhen(false)] out T built)
    {
        CheckNames();
        foreach (var field in shape.Fields)
        {
            Value(field);
        }

        CheckNeeds();
        try
        {
            return TryStep(node, () => build(this), out built);
        }
        catch (UnreadException)
        {
            built = default;
            return false;
        }
    }

    private object? Value(PlanField field)
    {
        if (!values.TryGetValue(field, out object? value))
        {
            if (!readers.TryGetValue(field, out var read))
            {
                throw new UnreachableException($"'{field.Name}' is no field of {shape.Name}.");
            }

            value = NodeOf(field) is { } found ? read(found, this) : null;
            values.Add(field, value);
        }

        return value;
    }

    /// <summary>What stands in a field. What may be left out may also be said to be not stated, which is the same.</summary>
    private PlanNode? NodeOf(PlanField field) =>
        node.Find(field.Name) is { } found && !(field.MayBeNotStated && found is { Kind: PlanNodeKind.Text, Text: NotStated })
            ? found
            : null;

    private void CheckNames()
    {
        var seen = new HashSet<string>(StringComparer.Ordinal);
        foreach (var (name, key, _) in node.Members)
        {
            if (!IsField(name))
            {
                string known = string.Join(", ", shape.Fields.Select(f => f.Name));
                Problems.Add(key.Problem($"unknown field; expected one of {known}"));
            }
            else if (!seen.Add(name))
            {
                Problems.Add(key.Problem("the field stands twice"));
            }
        }
    }

    private bool IsField(string name)
    {
        foreach (var field in shape.Fields)
        {
            if (field.Name == name)
            {
                return true;
            }
        }

        return false;
    }

    private void CheckNeeds()
    {
        foreach (var field in shape.Fields)
        {
            if (field.Need == PlanNeed.Required && !Has(field))
            {
                Problems.Add(node.Problem($"the field '{field.Name}' is missing: {field.Meaning}"));
            }
        }

        if (shape.OneOf.Count == 0)
        {
            return;
        }

        var there = shape.OneOf.Where(Has).Select(f => f.Name).ToList();
        if (there.Count != 1)
        {
            string found = there.Count == 0 ? "none" : string.Join(" and ", there);
            string names = string.Join(", ", shape.OneOf.Select(f => f.Name));
            Problems.Add(node.Problem($"expected exactly one of {names}, found {found}"));
        }
    }

    /// <summary>Ends the making of a part whose mistakes are reported.</summary>
    private sealed class UnreadException : Exception;
}
