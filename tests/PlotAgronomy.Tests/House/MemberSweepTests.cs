using System.Collections;
using System.Collections.Immutable;
using System.Diagnostics;
using System.Reflection;
using System.Xml.Linq;
using PlotAgronomy.Tests.Support;
using UnitsNet;

namespace PlotAgronomy.Tests.House;

/// <summary>Every public member called with nulls, unset lists and extremes: it answers, or refuses with an argument's name. An
/// exception of another kind stands in its documentation.</summary>
public class MemberSweepTests
{
    private const BindingFlags Own = BindingFlags.Public | BindingFlags.Static | BindingFlags.Instance | BindingFlags.DeclaredOnly;

    private static readonly TimeSpan Longest = TimeSpan.FromSeconds(5);

    private static readonly Lazy<Dictionary<Type, List<object>>> Pool = new(FillPool);

    private static readonly Lazy<ILookup<string, string>> Documented = new(() =>
        XDocument.Load(Path.ChangeExtension(HouseAssembly.Library.Location, ".xml")).Descendants("member")
            .SelectMany(m => m.Elements("exception").Select(e => (Name: m.Attribute("name")!.Value.Split('(')[0], Type: e.Attribute("cref")!.Value[2..])))
            .ToLookup(d => d.Name, d => d.Type));

    public static TheoryData<string> Rooms => [.. HouseAssembly.PublicTypes.Select(t => HouseAssembly.RoomOf(t) ?? "").Distinct().Order(StringComparer.Ordinal)];

    [Theory, MemberData(nameof(Rooms))]
    public void Members_answer_or_refuse_by_name(string room)
    {
        var failures = new SortedSet<string>(StringComparer.Ordinal);
        foreach (var type in HouseAssembly.PublicTypes.Where(t => (HouseAssembly.RoomOf(t) ?? "") == room && !t.ContainsGenericParameters && !HouseAssembly.IsCompilerMade(t) && !t.Name.StartsWith('<') && !t.IsNested && !typeof(Delegate).IsAssignableFrom(t)))
        {
            foreach (var method in type.GetMethods(Own).Where(m => !m.ContainsGenericParameters && !m.Name.StartsWith("set_", StringComparison.Ordinal) && m.GetParameters().All(p => !p.ParameterType.IsByRefLike)))
            {
                foreach (object? target in method.IsStatic ? Enumerable.Repeat<object?>(null, 1) : InstancesOf(type).Take(2))
                {
                    Call(method, target, failures);
                }
            }

            SetEach(type, failures);
        }

        Assert.True(failures.Count == 0, string.Join("\n", failures));
    }

    [Fact]
    public void A_public_result_says_what_it_is_when_it_is_printed()
    {
        Assert.Empty(from type in HouseAssembly.PublicTypes
                     where type is { IsClass: true, IsAbstract: false } && !typeof(Exception).IsAssignableFrom(type) && !typeof(Attribute).IsAssignableFrom(type) && !typeof(Delegate).IsAssignableFrom(type)
                     where !type.IsGenericType && !type.Name.StartsWith('<') && !type.Name.Contains("Json", StringComparison.Ordinal)
                     where type.GetMethod("ToString", Type.EmptyTypes)!.DeclaringType!.Assembly != HouseAssembly.Library
                     select type.Name);
        Assert.Empty(from known in Pool.Value
                     where known.Key.IsClass && !known.Key.IsGenericType
                     from one in known.Value
                     where one.ToString() is null or "" || one.ToString()!.Contains("PlotAgronomy.", StringComparison.Ordinal)
                     select $"{known.Key.Name}: {one}");
    }

    /// <summary>Each parameter in turn takes every odd value, the others a usual one.</summary>
    private static void Call(MethodInfo method, object? target, SortedSet<string> failures)
    {
        var parameters = method.GetParameters();
        object?[] usual = [.. parameters.Select(p => Usual(p.ParameterType))];
        Try(method, target, (object?[])usual.Clone(), "usual values", failures);
        for (int i = 0; i < parameters.Length; i++)
        {
            if (parameters[i].IsOut)
            {
                continue;
            }

            foreach (var (value, words) in Odd(parameters[i].ParameterType))
            {
                object?[] arguments = (object?[])usual.Clone();
                arguments[i] = value;
                Try(method, target, arguments, $"{parameters[i].Name} = {words}", failures);
            }
        }
    }

    private static void Try(MethodInfo method, object? target, object?[] arguments, string with, SortedSet<string> failures)
    {
        string name = $"{method.DeclaringType!.Name}.{method.Name}";
        var watch = Stopwatch.StartNew();
        try
        {
            object? answer = method.Invoke(target, arguments);
            if (answer is IEnumerable many and not string)
            {
                foreach (object? item in many)
                {
                    _ = item;
                }
            }
        }
        catch (TargetInvocationException thrown)
        {
            if (Fault(method, thrown.InnerException!) is { } fault)
            {
                failures.Add($"{name}, {with}: {fault}");
            }
        }
        catch (Exception thrown) when (thrown is not OutOfMemoryException)
        {
            failures.Add($"{name}, {with}, read through: {thrown.GetType().Name}");
        }

        if (watch.Elapsed > Longest)
        {
            failures.Add($"{name}, {with}: took long");
        }
    }

    private static string? Fault(MethodInfo method, Exception thrown)
    {
        bool isTry = method.Name.StartsWith("Try", StringComparison.Ordinal);
        if (thrown is ArgumentException refused && !isTry)
        {
            return refused.ParamName == "val" ? "the unit library's own message" : null;
        }

        string owner = method.DeclaringType!.FullName!;
        string[] documented = [.. Documented.Value[$"M:{owner}.{method.Name}"], .. Documented.Value[$"P:{owner}.{method.Name[(method.Name.IndexOf('_', StringComparison.Ordinal) + 1)..]}"]];
        return !isTry && documented.Any(d => Inherits(thrown.GetType(), d)) ? null : $"{thrown.GetType().Name}: {thrown.Message.Split('\n')[0]}";
    }

    private static bool Inherits(Type? type, string name) => type is not null && (type.FullName == name || Inherits(type.BaseType, name));

    /// <summary>Public init properties of what a caller may make: a wrong value is refused where it is set.</summary>
    private static void SetEach(Type type, SortedSet<string> failures)
    {
        if (type.IsAbstract || type.GetConstructor(Type.EmptyTypes) is null)
        {
            return;
        }

        foreach (var property in type.GetProperties(BindingFlags.Public | BindingFlags.Instance).Where(p => p.SetMethod is { IsPublic: true }))
        {
            bool mayBeNull = new NullabilityInfoContext().Create(property).WriteState == NullabilityState.Nullable;
            foreach (var (value, words) in Odd(property.PropertyType).Where(o => o.Value is not null || !mayBeNull))
            {
                object made = Activator.CreateInstance(type)!;
                bool mustRefuse = value is null || words is "not made" or "a null in it";
                try
                {
                    property.SetValue(made, value);
                    if (mustRefuse)
                    {
                        failures.Add($"{type.Name}.{property.Name} = {words}: taken");
                    }
                }
                catch (TargetInvocationException thrown)
                {
                    if (thrown.InnerException is not ArgumentException)
                    {
                        failures.Add($"{type.Name}.{property.Name} = {words}: {thrown.InnerException!.GetType().Name}");
                    }
                }
            }
        }
    }

    private static List<object> InstancesOf(Type type) => Pool.Value.GetValueOrDefault(type) ?? (type.IsValueType ? [Activator.CreateInstance(type)!] : []);

    private static object? Usual(Type type)
    {
        var plain = Nullable.GetUnderlyingType(type) ?? (type.IsByRef ? type.GetElementType()! : type);
        return InstancesOf(plain).FirstOrDefault()
            ?? Item(plain) switch
            {
                { } item when ListOf(plain, [Usual(item)]) is { } list => list,
                _ => Values(plain).Select(v => v.Value).FirstOrDefault(v => v is not null),
            };
    }

    private static IEnumerable<(object? Value, string Words)> Odd(Type type)
    {
        var plain = Nullable.GetUnderlyingType(type) ?? (type.IsByRef ? type.GetElementType()! : type);
        if (!type.IsValueType || plain != type)
        {
            yield return (null, "null");
        }

        if (Item(plain) is { } item)
        {
            if (plain.IsValueType)
            {
                yield return (Activator.CreateInstance(plain), "not made");
            }

            yield return (ListOf(plain, []), "nothing in it");
            if (!item.IsValueType)
            {
                yield return (ListOf(plain, [null]), "a null in it");
                yield return (ListOf(plain, [Usual(item), null]), "a null in it");
            }
            else
            {
                foreach (var (value, words) in Odd(item).Where(v => v.Value is not null))
                {
                    yield return (ListOf(plain, [value, value, value]), $"three of {words}");
                }
            }

            yield break;
        }

        foreach (var odd in Values(plain))
        {
            yield return odd;
        }
    }

    private static IEnumerable<(object? Value, string Words)> Values(Type type)
    {
        object?[] values =
            type == typeof(double) ? [1.0, 0.0, -1.0, double.NaN, double.PositiveInfinity, double.NegativeInfinity, double.MaxValue, -double.MaxValue, double.Epsilon, 1e9]
            : type == typeof(int) ? [1, 0, -1, int.MaxValue, int.MinValue]
            : type == typeof(decimal) ? [1m, 0m, -1m, decimal.MaxValue, decimal.MinValue]
            : type == typeof(bool) ? [false, true]
            : type == typeof(string) ? ["lb", "", " ", "\ud800", "12 lb", "1e400 lb", "99999999999999999999999999999999999999 s", "NaN", new string('9', 400), "\u0663 lb", "{\"type\":\"\\ud800\"}"]
            : type == typeof(DateOnly) ? [new DateOnly(2026, 9, 1), DateOnly.MinValue, DateOnly.MaxValue]
            : type == typeof(TimeSpan) ? [TimeSpan.FromSeconds(30), TimeSpan.Zero, TimeSpan.MinValue, TimeSpan.MaxValue, TimeSpan.FromTicks(1)]
            : type == typeof(Mass) ? [Mass.FromPounds(10), Mass.Zero, Mass.FromPounds(-1), Mass.FromMegatonnes(1e300), Mass.FromGrams(1e-300)]
            : type == typeof(Area) ? [Area.FromAcres(1), Area.Zero, Area.FromAcres(-1), Area.FromSquareKilometers(1e300), Area.FromSquareMicrometers(1e-300)]
            : type == typeof(Length) ? [Length.FromFeet(10), Length.Zero, Length.FromFeet(-1), Length.FromKilometers(1e306), Length.FromNanometers(1e-300)]
            : type == typeof(Speed) ? [Speed.FromMilesPerHour(3), Speed.Zero, Speed.FromMilesPerHour(-1), Speed.FromKilometersPerSecond(1e304), Speed.FromMilesPerHour(1e-300)]
            : type == typeof(Volume) ? [Volume.FromUsGallons(3), Volume.Zero, Volume.FromUsGallons(-1), Volume.FromCubicKilometers(1e298), Volume.FromUsGallons(1e-300)]
            : type == typeof(MassFlow) ? [MassFlow.FromPoundsPerMinute(2), MassFlow.Zero, MassFlow.FromPoundsPerMinute(-1), MassFlow.FromTonnesPerHour(1e306), MassFlow.FromPoundsPerMinute(1e-300)]
            : type == typeof(Density) ? [Density.FromPoundsPerCubicFoot(48), Density.Zero, Density.FromPoundsPerCubicFoot(-1), Density.FromTonnesPerCubicMillimeter(1e296), Density.FromPoundsPerCubicFoot(1e-300)]
            : type.IsEnum ? [.. Enum.GetValues(type).Cast<object>().Take(2), Enum.ToObject(type, 99)]
            : type.IsValueType && type.Assembly == HouseAssembly.Library ? [.. InstancesOf(type).Take(2), Activator.CreateInstance(type)]
            : type.IsValueType && type.FullName!.StartsWith("System.ValueTuple", StringComparison.Ordinal) ? [TupleOf(type)]
            : type.IsValueType ? [Activator.CreateInstance(type)]
            : [.. InstancesOf(type).Take(2)];
        return values.Select(v => (v, type.Assembly == HouseAssembly.Library ? $"a {type.Name}" : v?.ToString() is { Length: < 60 } words ? words : $"a long {type.Name}"));
    }

    private static object TupleOf(Type tuple) => Activator.CreateInstance(tuple, [.. tuple.GetGenericArguments().Select(Usual)])!;

    private static Type? Item(Type type) =>
        type.IsGenericType && type.GetGenericArguments() is [var item]
        && (type.GetGenericTypeDefinition() == typeof(ImmutableArray<>) || type.GetGenericTypeDefinition() == typeof(IReadOnlyList<>) || type.GetGenericTypeDefinition() == typeof(IEnumerable<>) || type.GetGenericTypeDefinition() == typeof(IReadOnlyCollection<>))
            ? item
            : type.IsArray ? type.GetElementType() : null;

    private static object? ListOf(Type list, object?[] items)
    {
        var item = Item(list)!;
        var array = Array.CreateInstance(item, items.Length);
        for (int i = 0; i < items.Length; i++)
        {
            if (items[i] is null && item.IsValueType)
            {
                return null;
            }

            array.SetValue(items[i], i);
        }

        return list.IsValueType
            ? typeof(ImmutableArray).GetMethods().Single(m => m.Name == "Create" && m.GetParameters() is [{ ParameterType.IsArray: true }]).MakeGenericMethod(item).Invoke(null, [array])
            : array;
    }

    /// <summary>Objects of many types: those of the catalogs, and all that is reached from four solved plans by reading.</summary>
    private static Dictionary<Type, List<object>> FillPool()
    {
        var pool = new Dictionary<Type, List<object>>();
        var waiting = new Queue<object>();
        foreach (string demo in new[] { "fall-blend", "frost-seeding", "clover-lots", "store-blend" })
        {
            waiting.Enqueue(PlanFile.Read(File.ReadAllText(Repository.PathOf($"samples/data/{demo}.json"))).Plan!.Solve());
        }

        foreach (var type in HouseAssembly.PublicTypes.Where(t => !t.ContainsGenericParameters))
        {
            foreach (var property in type.GetProperties(BindingFlags.Public | BindingFlags.Static))
            {
                Reach(property.GetValue(null), waiting);
            }
        }

        while (waiting.TryDequeue(out object? at))
        {
            var list = pool.TryGetValue(at.GetType(), out var known) ? known : pool[at.GetType()] = [];
            if (list.Count >= 3)
            {
                continue;
            }

            list.Add(at);
            foreach (var property in at.GetType().GetProperties(BindingFlags.Public | BindingFlags.Instance).Where(p => p.GetIndexParameters().Length == 0))
            {
                try
                {
                    Reach(property.GetValue(at), waiting);
                }
                catch (TargetInvocationException)
                {
                    // An open answer has no value.
                }
            }
        }

        return pool;
    }

    private static void Reach(object? value, Queue<object> waiting)
    {
        if (value is null || value is string || value.GetType().IsPrimitive)
        {
            return;
        }

        if (value.GetType().Assembly == HouseAssembly.Library)
        {
            waiting.Enqueue(value);
        }
        else if (value is IEnumerable items && !(value.GetType() is { IsValueType: true } array && array.GetProperty("IsDefault")?.GetValue(value) is true))
        {
            foreach (object? item in items.Cast<object?>().Take(3))
            {
                Reach(item, waiting);
            }
        }
    }
}
