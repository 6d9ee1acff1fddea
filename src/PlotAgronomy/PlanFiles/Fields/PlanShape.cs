using System.Diagnostics.CodeAnalysis;
using System.Text.Json;

namespace PlotAgronomy.PlanFiles;

/// <summary>One kind of object of the plan file: the list of its fields, how it is read and what it is written from.</summary>
/// <param name="name">Name in the schema.</param>
/// <param name="meaning">One sentence for schema, page and messages.</param>
internal class PlanShape<TRead, TWrite>(string name, string meaning) : PlanValue<TRead, TWrite>, IPlanDefinition
{
    private readonly List<PlanField> fields = [];
    private readonly List<PlanField> oneOf = [];
    private readonly Dictionary<PlanField, PlanPart.Reader> readers = [];
    private readonly List<Func<TWrite, string, List<PlanProblem>, PlanNode?>> writers = [];
    private readonly List<(string What, Func<TWrite, bool> IsThere)> unsaid = [];
    private Func<PlanPart, TRead>? build;

    public string Name => name;

    public string Meaning => meaning;

    public IReadOnlyList<PlanField> Fields => fields;

    public IReadOnlyList<PlanField> OneOf => oneOf;

    internal override IPlanDefinition Definition => this;

    internal override string InWords => $"object: {name}";

    internal override string InListWords => name;

    /// <summary>Declares the next field, which must be there.</summary>
    /// <param name="field">Name in the file.</param>
    /// <param name="value">What it may hold.</param>
    /// <param name="says">One sentence for schema, page and messages.</param>
    /// <param name="from">What is written.</param>
    internal PlanField<TField> Required<TField, TFrom>(
        string field,
        PlanValue<TField, TFrom> value,
        string says,
        Func<TWrite, TFrom?> from
    )
        where TFrom : struct => Add(field, PlanNeed.Required, value, says, w => from(w) is { } there ? (true, there) : default);

    /// <inheritdoc cref="Required{TField, TFrom}(string, PlanValue{TField, TFrom}, string, Func{TWrite, TFrom?})"/>
    internal PlanField<TField> Required<TField, TFrom>(
        string field,
        PlanValue<TField, TFrom> value,
        string says,
        Func<TWrite, TFrom?> from
    )
        where TFrom : class => Add(field, PlanNeed.Required, value, says, w => from(w) is { } there ? (true, there) : default);

    /// <summary>Declares the next field, which may be left out.</summary>
    /// <param name="field">Name in the file.</param>
    /// <param name="value">What it may hold.</param>
    /// <param name="says">One sentence for schema, page and messages.</param>
    /// <param name="from">What is written; null leaves the field out.</param>
    /// <param name="need">Whether exactly one of several fields must be there.</param>
    internal PlanField<TField> Optional<TField, TFrom>(
        string field,
        PlanValue<TField, TFrom> value,
        string says,
        Func<TWrite, TFrom?> from,
        PlanNeed need = PlanNeed.Optional
    )
        where TFrom : struct => Add(field, need, value, says, w => from(w) is { } there ? (true, there) : default);

    /// <inheritdoc cref="Optional{TField, TFrom}(string, PlanValue{TField, TFrom}, string, Func{TWrite, TFrom?}, PlanNeed)"/>
    internal PlanField<TField> Optional<TField, TFrom>(
        string field,
        PlanValue<TField, TFrom> value,
        string says,
        Func<TWrite, TFrom?> from,
        PlanNeed need = PlanNeed.Optional
    )
        where TFrom : class => Add(field, need, value, says, w => from(w) is { } there ? (true, there) : default);

    /// <summary>Declares what this may hold and a plan file has no field for.</summary>
    /// <param name="what">Such as "a salt pH".</param>
    /// <param name="isThere">Whether it is there.</param>
    internal void Unsaid(string what, Func<TWrite, bool> isThere) => unsaid.Add((what, isThere));

    /// <summary>Declares what is made of the fields.</summary>
    internal void ReadAs(Func<PlanPart, TRead> making) => build = making;

    /// <summary>The fields that it must have, for the message where something else stands.</summary>
    private string WithFields
    {
        get
        {
            string[] needed = [.. fields.Where(f => f.Need == PlanNeed.Required).Select(f => $"'{f.Name}'")];
            return needed.Length == 0 ? "" : $" with {string.Join(" and ", needed)}";
        }
    }

    public void Define(Utf8JsonWriter schema)
    {
        schema.WriteString("type", "object");
        schema.WriteStartObject("properties");
        foreach (var field in Fields)
        {
            schema.WriteStartObject(field.Name);
            schema.WriteString("description", field.Meaning);
            SchemaText.WriteOrNotStated(schema, field);
            schema.WriteEndObject();
        }

        schema.WriteEndObject();
        SchemaText.WriteNames(schema, "required", Fields.Where(f => f.Need == PlanNeed.Required).Select(f => f.Name));
        SchemaText.WriteOneOf(schema, oneOf.Select(f => f.Name));
        schema.WriteBoolean("additionalProperties", false);
    }

    internal override void Describe(Utf8JsonWriter schema) => SchemaText.WriteReference(schema, Name);

    internal override bool TryRead(PlanNode node, PlanPart at, [MaybeNullWhen(false)] out TRead value) =>
        TryRead(node, at, at.Problems, out value);

    /// <summary>Reads the outermost object of a file.</summary>
    internal bool TryRead(
        PlanNode node,
        PlanPart? around,
        List<PlanProblem> problems,
        [MaybeNullWhen(false)] out TRead value,
        PlanReading? reading = null
    )
    {
        value = default;
        if (node.Kind != PlanNodeKind.Object)
        {
            problems.Add(node.Problem($"expected an object{WithFields} ({meaning}), found {node.Describe()}"));
            return false;
        }

        return Part(node, around, problems, reading).TryBuild(build!, out value);
    }

    /// <summary>An object of a file, to be read as this.</summary>
    internal PlanPart Part(PlanNode node, PlanPart? around, List<PlanProblem> problems, PlanReading? reading = null) =>
        new(node, this, readers, around, problems, reading);

    internal override PlanNode Write(TWrite value, string path, List<PlanProblem> refusals)
    {
        foreach (var (what, _) in unsaid.Where(u => u.IsThere(value)))
        {
            refusals.Add(PlanProblem.At(path, $"there is no field for {what}"));
        }

        var whole = new PlanNode(PlanNodeKind.Object, path);
        foreach (var (field, write) in fields.Zip(writers))
        {
            if (
                write(value, PlanNode.MemberPath(path, field.Name), refusals) is { } written
                && (field.Need == PlanNeed.Required || !written.IsEmpty)
            )
            {
                whole.Members.Add(new(field.Name, written, written));
            }
        }

        return whole;
    }

    private PlanValueField<TField> Add<TField, TFrom>(
        string field,
        PlanNeed need,
        PlanValue<TField, TFrom> value,
        string says,
        Func<TWrite, (bool IsThere, TFrom Value)> from
    )
    {
        var added = new PlanValueField<TField>(field, need, value, says);
        fields.Add(added);
        if (need == PlanNeed.OneOf)
        {
            oneOf.Add(added);
        }

        readers.Add(added, (node, at) => value.TryRead(node, at, out var found) ? found : null);
        writers.Add((w, path, refusals) => from(w) is (true, var there) ? value.Write(there, path, refusals) : null);
        return added;
    }
}

/// <summary>An object of the file that is read into what it is written from.</summary>
internal class PlanShape<T>(string name, string meaning) : PlanShape<T, T>(name, meaning);

/// <summary>An object of the file that only holds some fields of a greater thing together.</summary>
internal sealed class PlanGroup<TWrite> : PlanShape<PlanPart, TWrite>
{
    internal PlanGroup(string name, string meaning)
        : base(name, meaning) => ReadAs(at => at);
}
