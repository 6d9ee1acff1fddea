using System.Reflection;
using System.Runtime.CompilerServices;

namespace PlotAgronomy.Tests.House;

/// <summary>Immutable results, sealed classes, no hidden state.</summary>
public class ShapeTests
{
    [Fact]
    public void Public_classes_are_sealed_or_static() =>
        Assert.Empty(HouseAssembly.PublicTypes.Where(t => t is { IsClass: true, IsSealed: false } && !(t.IsAbstract && OnlyOurOwnCanDerive(t))).Select(t => t.FullName));

    [Fact]
    public void Nobody_outside_can_forge_a_result() =>
        Assert.Empty(HouseAssembly.PublicTypes.Where(t => typeof(IWorkedResult).IsAssignableFrom(t) && t.GetConstructors().Length > 0).Select(t => t.FullName));

    [Fact]
    public void Public_structs_are_readonly() =>
        Assert.Empty(HouseAssembly.PublicTypes.Where(t => t is { IsValueType: true, IsEnum: false } && !t.IsDefined(typeof(IsReadOnlyAttribute), false)).Select(t => t.FullName));

    [Fact]
    public void Public_properties_have_no_setter_but_init() =>
        Assert.Empty(from t in HouseAssembly.PublicTypes
                     from p in t.GetProperties(BindingFlags.Public | BindingFlags.Instance | BindingFlags.Static)
                     where p.DeclaringType!.Assembly == HouseAssembly.Library
                     where p.SetMethod is { IsPublic: true } set && !set.ReturnParameter.GetRequiredCustomModifiers().Contains(typeof(IsExternalInit))
                     select $"{t.FullName}.{p.Name}");

    [Fact]
    public void Public_properties_hand_out_no_array_or_mutable_collection() =>
        Assert.Empty(from t in HouseAssembly.PublicTypes
                     from p in t.GetProperties(BindingFlags.Public | BindingFlags.Instance | BindingFlags.Static)
                     where IsMutableCollection(p.PropertyType)
                     select $"{t.FullName}.{p.Name}");

    [Fact]
    public void There_is_no_mutable_static_state() =>
        Assert.Empty(from t in HouseAssembly.AllTypes
                     where !HouseAssembly.IsCompilerMade(t)
                     from f in t.GetFields(BindingFlags.Static | BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.DeclaredOnly)
                     where !f.IsDefined(typeof(CompilerGeneratedAttribute), false)
                     where !(f.IsLiteral || f.IsInitOnly) || (IsMutableCollection(f.FieldType) && !f.IsPrivate)
                     select $"{t.FullName}.{f.Name}");

    [Fact]
    public void Results_that_show_their_working_are_classes_not_records() =>
        Assert.Empty(HouseAssembly.PublicTypes.Where(t => typeof(IWorkedResult).IsAssignableFrom(t) && t.GetMethod("<Clone>$") is not null).Select(t => t.FullName));

    [Fact]
    public void No_public_record_class_holds_a_quantity() =>
        Assert.Empty(from t in HouseAssembly.PublicTypes
                     where (t.GetMethod("<Clone>$") is not null && !ComparesAndPrintsItself(t)) || (t.IsValueType && t.GetMethod("PrintMembers", BindingFlags.NonPublic | BindingFlags.Instance) is not null)
                     from f in t.GetFields(BindingFlags.NonPublic | BindingFlags.Instance)
                     where typeof(UnitsNet.IQuantity).IsAssignableFrom(f.FieldType)
                     select $"{t.FullName}.{f.Name}");

    [Fact]
    public void No_class_shares_its_namespaces_name_and_no_namespace_hides_a_class_of_dotnet()
    {
        var rooms = HouseAssembly.AllTypes.Select(HouseAssembly.RoomOf).OfType<string>().Where(r => r.Length > 0).ToHashSet();
        Assert.Empty(HouseAssembly.PublicTypes.Where(t => rooms.Contains(t.Name)).Select(t => t.FullName));
        var systemTypes = typeof(object).Assembly.GetExportedTypes().Concat(typeof(Console).Assembly.GetExportedTypes())
            .Where(t => t.Namespace is "System" or "System.IO" or "System.Linq" or "System.Collections.Generic" or "System.Threading" or "System.Threading.Tasks").Select(t => t.Name).ToHashSet();
        Assert.Empty(rooms.Where(systemTypes.Contains));
    }

    /// <summary>A record of facts that is equal to itself alone and writes its own text.</summary>
    private static bool ComparesAndPrintsItself(Type record) =>
        new[] { record.GetMethod("Equals", [record]), record.GetMethod("ToString", []), record.GetMethod("PrintMembers", BindingFlags.NonPublic | BindingFlags.Instance) }
            .All(m => m?.IsDefined(typeof(CompilerGeneratedAttribute), false) == false);

    /// <summary>By its constructors, or by a member that only the library can fill in: the copies of an open record are protected.</summary>
    private static bool OnlyOurOwnCanDerive(Type type) =>
        type.GetConstructors(BindingFlags.NonPublic | BindingFlags.Instance | BindingFlags.Public).All(c => c.IsAssembly || c.IsFamilyAndAssembly || c.IsPrivate)
        || type.GetMethods(BindingFlags.NonPublic | BindingFlags.Instance).Any(m => m is { IsAbstract: true, IsAssembly: true });

    private static bool IsMutableCollection(Type type) =>
        type.IsArray || (type.IsGenericType && type.GetGenericTypeDefinition() is var open
            && (open == typeof(List<>) || open == typeof(Dictionary<,>) || open == typeof(HashSet<>) || open == typeof(IList<>) || open == typeof(IDictionary<,>) || open == typeof(ICollection<>)));
}
