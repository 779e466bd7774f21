#include "common.hpp"

namespace ropewalk::bindings {

namespace {

/// A class of ropewalk.errors, looked up once. A plain static py::object would be destroyed after
/// the interpreter is gone and crash; the library's own once-storage is never destroyed.
template <int Slot>
const py::object& error_class(const char* name) {
  PYBIND11_CONSTINIT static py::gil_safe_call_once_and_store<py::object> storage;
  return storage
      .call_once_and_store_result(
          [name] { return py::module_::import("ropewalk.errors").attr(name).cast<py::object>(); })
      .get_stored();
}

void set_error(const py::object& cls, const Error& error) {
  const py::object instance = cls(error.what(), error.where(), error.field());
  PyErr_SetObject(cls.ptr(), instance.ptr());
}

}  // namespace

void register_errors() {
  py::register_local_exception_translator([](std::exception_ptr pointer) {
    try {
      if (pointer) std::rethrow_exception(pointer);
    } catch (const BorderError& error) {
      set_error(error_class<0>("UnitError"), error);
    } catch (const InadmissibleError& error) {
      set_error(error_class<1>("InadmissibleError"), error);
    } catch (const ValidityError& error) {
      set_error(error_class<2>("ValidityError"), error);
    } catch (const LookupError& error) {
      set_error(error_class<3>("UnknownEntryError"), error);
    } catch (const Error& error) {
      set_error(error_class<4>("RopewalkError"), error);
    }
  });
}

void warn_outside_validity(const std::string& message) {
  // Level 2: the caller of the Python face, not the face itself.
  if (PyErr_WarnEx(error_class<5>("ValidityWarning").ptr(), message.c_str(), 2) != 0) {
    throw py::error_already_set();
  }
}

}  // namespace ropewalk::bindings
