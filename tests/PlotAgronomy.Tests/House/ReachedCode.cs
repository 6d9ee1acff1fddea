using System.Reflection;

namespace PlotAgronomy.Tests.House;

/// <summary>The methods that may run when a few are called: what they name, what a type runs when it is first used, and what stands
/// in for an abstract or interface member, where an object of that type is made. Text of people (ToString) is not followed.</summary>
internal sealed class ReachedCode
{
    private static readonly string[] NotFollowed = ["ToString", "PrintMembers", "GetHashCode", "Equals"];

    private readonly HashSet<Assembly> assemblies;
    private readonly ILookup<MethodBase, (Type Type, MethodBase Runs)> standIns;
    private readonly Dictionary<Type, List<MethodBase>> waiting = [];
    private readonly HashSet<Type> made = [];
    private readonly HashSet<MethodBase> seen = [];
    private readonly HashSet<MethodBase> methods = [];
    private readonly Stack<MethodBase> open = new();

    internal ReachedCode(params IEnumerable<Assembly> assemblies)
    {
        this.assemblies = [.. assemblies];
        standIns = this.assemblies.SelectMany(a => a.GetTypes()).SelectMany(StandIns).ToLookup(s => s.Called, s => (s.Type, s.Runs));
    }

    internal IReadOnlyCollection<MethodBase> Methods => methods;

    /// <summary>Gets what the reached methods name.</summary>
    internal IEnumerable<(System.Reflection.Emit.OpCode Code, MemberInfo Member)> Mentions => methods.SelectMany(IlReader.Mentions);

    /// <summary>Gets the types of which the reached methods make objects.</summary>
    internal IReadOnlySet<Type> Made => made;

    internal void From(params IEnumerable<MethodBase> roots)
    {
        foreach (var root in roots)
        {
            Add(root);
        }

        while (open.TryPop(out var method))
        {
            foreach (var (code, member) in IlReader.Mentions(method))
            {
                if (code.Name == "newobj")
                {
                    Make(Definition(member.DeclaringType!));
                }

                Follow(member);
            }
        }
    }

    internal static Type Definition(Type type) => type.IsConstructedGenericType ? type.GetGenericTypeDefinition() : type;

    private void Follow(MemberInfo member)
    {
        if (member is MethodBase called)
        {
            Add(called);
        }

        var owner = member as Type ?? member.DeclaringType;
        if (owner is null || !assemblies.Contains(owner.Assembly))
        {
            return;
        }

        var type = Definition(owner);
        if (type.TypeInitializer is { } initializer)
        {
            Add(initializer);
        }

        // What the compiler makes of an iterator runs when somebody walks over it.
        if (member is ConstructorInfo && HouseAssembly.IsCompilerMade(type) && !type.Name.Contains("DisplayClass", StringComparison.Ordinal))
        {
            foreach (var step in IlReader.MethodsOf(type))
            {
                Add(step);
            }
        }
    }

    private void Add(MethodBase called)
    {
        var method = Definition(called);
        if (!seen.Add(method))
        {
            return;
        }

        if (!NotFollowed.Contains(method.Name) && assemblies.Contains(method.Module.Assembly))
        {
            methods.Add(method);
            open.Push(method);
        }

        foreach (var (type, runs) in standIns[method])
        {
            if (type.IsValueType || made.Contains(type))
            {
                Add(runs);
            }
            else if (waiting.TryGetValue(type, out var known))
            {
                known.Add(runs);
            }
            else
            {
                waiting.Add(type, [runs]);
            }
        }
    }

    private void Make(Type type)
    {
        if (made.Add(type) && waiting.Remove(type, out var runs))
        {
            foreach (var method in runs)
            {
                Add(method);
            }
        }
    }

    private static MethodBase Definition(MethodBase method)
    {
        var plain = method is MethodInfo { IsGenericMethod: true } made ? made.GetGenericMethodDefinition() : method;
        return plain.DeclaringType is { IsConstructedGenericType: true } || plain.DeclaringType != plain.ReflectedType
            ? plain.Module.ResolveMethod(plain.MetadataToken)!
            : plain;
    }

    /// <summary>The methods of a type that run where another one is called: overrides, and members of interfaces.</summary>
    private static IEnumerable<(Type Type, MethodBase Called, MethodBase Runs)> StandIns(Type type)
    {
        if (type.IsInterface || type.IsAbstract)
        {
            yield break;
        }

        foreach (var method in type.GetMethods(IlReader.Everything & ~BindingFlags.DeclaredOnly).Where(m => m.IsVirtual && m.GetBaseDefinition() != m))
        {
            yield return (type, Definition(method.GetBaseDefinition()), Definition(method));
        }

        foreach (var contract in type.GetInterfaces().Where(i => i.Assembly == type.Assembly))
        {
            var map = type.GetInterfaceMap(contract);
            for (int i = 0; i < map.InterfaceMethods.Length; i++)
            {
                yield return (type, Definition(map.InterfaceMethods[i]), Definition(map.TargetMethods[i]));
            }
        }
    }
}
