using System.Reflection;

namespace PlotAgronomy.Tests.House;

/// <summary>A room uses rooms on lower floors only, none on its own.</summary>
public class FloorTests
{
    /// <summary>The root lies under Reference, so that tables can speak of findings.</summary>
    internal static readonly IReadOnlyDictionary<string, double> Floors = new Dictionary<string, double>
    {
        [""] = -1,
        ["Reference"] = 0,
        ["Soil"] = 1,
        ["Seeds"] = 1,
        ["Land"] = 1,
        ["Plots"] = 2,
        ["Liming"] = 3,
        ["Nutrients"] = 3,
        ["Blends"] = 3,
        ["Spreading"] = 3,
        ["Weather"] = 3,
        ["Fertilizers"] = 4,
        ["Calendar"] = 4,
        ["Records"] = 5,
        ["Planning"] = 6,
        ["PlanFiles"] = 7,
        ["Sheets"] = 7,
        ["Columns"] = 7,
    };

    [Fact]
    public void Every_room_has_a_floor() =>
        Assert.Empty(HouseAssembly.AllTypes.Select(HouseAssembly.RoomOf).OfType<string>().Distinct().Where(room => !Floors.ContainsKey(room)));

    [Fact]
    public void A_room_uses_lower_floors_only()
    {
        var wrong = new SortedSet<string>(StringComparer.Ordinal);
        foreach (var type in HouseAssembly.AllTypes)
        {
            if (HouseAssembly.RoomOf(type) is not { } room)
            {
                continue;
            }

            foreach (var used in UsedTypes(type))
            {
                if (HouseAssembly.RoomOf(used) is { } other && other != room && used.Assembly == HouseAssembly.Library && Floors[other] >= Floors[room])
                {
                    wrong.Add($"{type.FullName} uses {used.FullName}");
                }
            }
        }

        Assert.Empty(wrong);
    }

    private static IEnumerable<Type> UsedTypes(Type type)
    {
        var direct = type.GetFields(IlReader.Everything).Select(f => f.FieldType)
            .Concat(type.GetProperties(IlReader.Everything).Select(p => p.PropertyType))
            .Concat(type.GetInterfaces())
            .Concat(type.BaseType is { } parent ? [parent] : []);
        foreach (var method in IlReader.MethodsOf(type))
        {
            direct = direct.Concat(method.GetParameters().Select(p => p.ParameterType));
            direct = method is MethodInfo info ? direct.Append(info.ReturnType) : direct;
            direct = direct.Concat(IlReader.Mentions(method).SelectMany(m => m.Member switch
            {
                Type t => [t],
                MethodInfo m2 => m2.GetGenericArguments().Append(m2.DeclaringType!),
                _ => new[] { m.Member.DeclaringType! },
            }));
        }

        return direct.Where(t => t is not null).SelectMany(Unwrap).Distinct();
    }

    private static IEnumerable<Type> Unwrap(Type type) =>
        type.HasElementType ? Unwrap(type.GetElementType()!)
        : type.IsGenericType ? type.GetGenericArguments().SelectMany(Unwrap).Append(type.GetGenericTypeDefinition())
        : [type];
}
